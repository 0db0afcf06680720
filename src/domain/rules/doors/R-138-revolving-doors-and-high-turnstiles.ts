import { under } from '../../codes/sections.ts';
import { all, any, is, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const wings = all(
  yes('isEgress'),
  any(
    is('doorType', 'revolving', 'turnstileFull'),
    all(is('doorType', 'turnstile'), over('barrierHeightIn', 'turnstileHighIn')),
  ),
);

export const R138 = defineRule({
  id: 'R-138',
  title: 'Revolving doors and full-height turnstiles',
  family: 'doors',
  book: 'ibc',
  cites: [under('revolvingDoors'), under('turnstiles')],
  confidence: 'memory',
  note: 'All from general knowledge; the refusals are on the safe side. A waist-high turnstile above 39 in counts here too.',
  why: 'Wings that do not collapse, or that someone can lock, would trap people.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(wings, yes('groupH')),
      says: 'A revolving door or high turnstile is not allowed in the egress from a high-hazard space.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: wings,
      of: { not: { release: ['free'] } },
      says: 'The wings may not be locked against egress while anyone is inside; lock the swinging door beside it instead.',
    },
    {
      key: 'c',
      effect: 'require',
      when: wings,
      items: ['collapsingWings'],
      says: 'The wings collapse when people press on them and leave 36 in of passage in all.',
    },
    {
      key: 'd',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(wings, over('swingDoorBesideFt', 'revolvingSideDoorFt')),
      says: 'A swinging door must stand in the same wall within 10 ft; the nearest is {swingDoorBesideFt} away.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(wings, over('occupantLoad', 'revolvingLoad')),
      says: 'One revolving door counts for 50 people at most; the rest of {occupantLoad} needs other exits.',
    },
    {
      key: 'f',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(wings, yes('barriersOverHalf')),
      says: 'Revolving doors may give no more than half of the exit width.',
    },
    {
      key: 'g',
      effect: 'signOff',
      grade: 'must',
      when: wings,
      says: 'A reviewer confirms that the revolving door or high turnstile may count as egress.',
    },
  ],
});

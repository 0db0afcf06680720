import { under } from '../../codes/sections.ts';
import { all, is, over, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const turnstile = all(yes('isEgress'), is('doorType', 'turnstile'));

export const R136 = defineRule({
  id: 'R-136',
  title: 'Waist-high turnstile in a means of egress',
  family: 'doors',
  book: 'ibc',
  cites: [under('turnstiles')],
  confidence: 'read',
  note: 'Read in a city text of an older edition; section numbers of 2021 and 2024 are from general knowledge.',
  why: 'A turnstile passes people one at a time, so it counts for few and must turn freely when power fails.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: turnstile,
      items: ['powerLossRelease', 'employeeRelease'],
      says: 'It turns freely toward the exit on loss of power and when an attendant on the spot releases it.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(turnstile, below('clearWidthIn', 'turnstileClearIn')),
      says: 'The lane is {clearWidthIn} wide; a turnstile needs 16-1/2 in below its top and 22 in above.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(turnstile, over('occupantLoad', 'turnstileLoad')),
      says: 'One turnstile counts for 50 people at most; the rest of {occupantLoad} needs other exits.',
    },
    {
      key: 'd',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(
        turnstile,
        over('occupantLoad', 'turnstileSideDoorLoad'),
        over('swingDoorBesideFt', 'turnstileSideDoorFt'),
      ),
      says: 'With more than 300 people a side-hinged door must stand within 50 ft of the turnstiles; the nearest is {swingDoorBesideFt} away.',
    },
    {
      key: 'e',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(turnstile, yes('barriersOverHalf')),
      says: 'Turnstiles may give no more than half of the exit width; the other half must be doors.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: turnstile,
      says: 'A reviewer confirms that the turnstile may count as egress, and for how many.',
    },
  ],
});

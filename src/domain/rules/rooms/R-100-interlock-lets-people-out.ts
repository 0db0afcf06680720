import { text, under } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R100 = defineRule({
  id: 'R-100',
  title: 'An interlock lets people out',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), text('ibc', '408', 'Sallyports, the only interlock named')],
  confidence: 'secondary',
  note: 'Text for interlocks is approved for the 2027 edition of the IBC; before it only detention sallyports are named.',
  why: 'Two interlocked doors can lock a person in between.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('wishInterlock'), yes('interlockHoldsEgress'), not(is('occupancyGroup', 'I-3'))),
      of: { not: { release: ['free', 'stairReentry'] } },
      says: 'An interlock that can keep this leaf shut against egress is not recognized by the adopted codes outside detention; use hardware that always opens from the egress side.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: yes('wishInterlock'),
      says: 'A reviewer signs for the interlock: which way each leaf opens by hand, the override at both doors and the release on fire alarm.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(yes('wishInterlock'), no('interlockHoldsEgress')),
      of: { release: ['free'] },
      says: 'An entry-only interlock is an ordinary lock: each door opens by hand from its egress side, whatever the other does.',
    },
    {
      key: 'd',
      effect: 'require',
      when: yes('wishInterlock'),
      of: { wired: true },
      items: ['interlockLogic', 'interlockCable', 'interlockOverride'],
      says: 'A controller lets one door open only while the other is closed. Lock, door contact and override of each door are wired to it; fire alarm and override disable it.',
    },
  ],
});

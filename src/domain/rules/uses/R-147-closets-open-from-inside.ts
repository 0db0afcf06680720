import { under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const closet = all(is('roomUse', 'closet'), not(is('latch', 'pushPull', 'roller')));

export const R147 = defineRule({
  id: 'R-147',
  title: 'A closet opens from inside',
  family: 'uses',
  book: 'ibc',
  cites: [under('closetDoors')],
  confidence: 'memory',
  note: 'From general knowledge; refusing is the safe side.',
  why: 'A person who steps into a closet must not be locked in by its latch.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: closet,
      items: ['insideRelease'],
      says: 'A closet that latches needs a lever or knob inside that always opens it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: closet,
      of: { release: ['none', 'keyInside', 'credentialOut', 'buttonOnly', 'alarmOnly'] },
      says: 'This arrangement could lock a person in the closet.',
    },
  ],
});

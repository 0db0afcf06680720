import { under } from '../../codes/sections.ts';
import { all, ibc, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B33 = defineRule({
  id: 'B-33',
  title: 'Stair doors locked in a building without a fire alarm',
  family: 'contradictions',
  book: 'ibc',
  cites: [under('stairDoors')],
  confidence: 'memory',
  note: 'The alarm signal as a trigger came with the 2024 edition, read second-hand. That it is asked only where the area has an alarm is from general knowledge, so a building without one is put in doubt and not refused.',
  why: 'The 2024 edition wants the stair side unlocked by a fire-alarm signal from the area served, where there is one.',
  clauses: [
    {
      effect: 'finding',
      field: 'fireAlarm',
      severity: 'warn',
      when: all(
        ibc({ from: 2024, readTo: 2024 }),
        yes('stairSideToLock'),
        no('singleExitStair'),
        no('fireAlarm'),
      ),
      says: 'The stair side is to be locked and the building has no fire alarm that could unlock it: only the switch and a loss of power would. Check the alarm, and ask the authority or leave the stair side open.',
    },
  ],
});

import { under } from '../../codes/sections.ts';
import { all, ibc, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'no alarm under IBC 2024',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
      'yes',
      { basis: { ibc: 2024 }, does: 'warn fireAlarm' },
    ],
    [
      'no alarm under IBC 2021',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
      'no',
    ],
    [
      'IBC not adopted',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: false },
      'no',
      { basis: { ibc: null } },
    ],
    [
      'alarm there',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false, fireAlarm: true },
      'no',
      { basis: { ibc: 2024 } },
    ],
    [
      'stays open',
      { egressRole: 'stairEntry', stairLockWanted: 'none', singleExitStair: false, fireAlarm: false },
      'no',
      { basis: { ibc: 2024 } },
    ],
    [
      'single exit stair',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: true, fireAlarm: false },
      'no',
      { basis: { ibc: 2024 } },
    ],
    [
      'alarm not surveyed',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide', singleExitStair: false },
      'unknown',
      { basis: { ibc: 2024 } },
    ],
  ),
});

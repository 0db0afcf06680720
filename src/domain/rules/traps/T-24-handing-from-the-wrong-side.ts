import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const T24 = defineRule({
  id: 'T-24',
  title: 'Handing read from the wrong side',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '', 'Handing from the outside')],
  confidence: 'secondary',
  why: 'Hand is read from the secure side; a leaf that swings with the people leaving comes toward that side and is a reverse hand.',
  clauses: [
    {
      effect: 'finding',
      field: 'handing',
      severity: 'warn',
      when: all(
        is('egressRole', 'exitAccess', 'exteriorExit', 'stairDischarge'),
        any(
          all(yes('swingsWithEgress'), is('handing', 'LH', 'RH')),
          all(no('swingsWithEgress'), is('handing', 'LHR', 'RHR')),
        ),
      ),
      says: 'Hand and swing do not agree: a leaf that swings with egress is LHR or RHR seen from the secure side; read it again before the strike and the transfer are ordered.',
    },
  ],
  cases: cases(
    [
      'swings out, left plain',
      { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LH' },
      'yes',
      { does: 'warn handing' },
    ],
    ['swings out, right plain', { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'RH' }, 'yes'],
    [
      'swings out, left reverse',
      { egressRole: 'exteriorExit', swingsWithEgress: true, handing: 'LHR' },
      'no',
    ],
    ['swings in, left reverse', { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'LHR' }, 'yes'],
    [
      'swings in, right reverse',
      { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RHR' },
      'yes',
    ],
    ['swings in, right plain', { egressRole: 'exitAccess', swingsWithEgress: false, handing: 'RH' }, 'no'],
    [
      'a stair door is locked from either side',
      { egressRole: 'stairEntry', swingsWithEgress: true, handing: 'LH' },
      'no',
    ],
    [
      'people leave an elevator lobby away from the reader',
      { egressRole: 'elevatorLobby', swingsWithEgress: true, handing: 'LH' },
      'no',
    ],
    ['discharge of a stair', { egressRole: 'stairDischarge', swingsWithEgress: true, handing: 'RH' }, 'yes'],
    ['role not known', { swingsWithEgress: true, handing: 'LH' }, 'unknown'],
    ['hand not surveyed', { egressRole: 'exteriorExit', swingsWithEgress: true }, 'unknown'],
  ),
});

import { onEach } from '../onEach.ts';
import { cases, type CaseRow } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  latch: 'rimExit',
  occupancyGroup: 'A-3',
  occupantLoad: 50,
} as const;

const around = (clause: string, on: string): readonly CaseRow[] => [
  [
    'office for 49',
    { ...hall, occupancyGroup: 'B', roomUse: 'office', occupantLoad: 49 },
    'no',
    { clause, on },
  ],
  [
    'load not known',
    { egressRole: 'exitAccess', doorType: 'single', latch: 'rimExit', occupancyGroup: 'A-3' },
    'unknown',
    { clause, on },
  ],
];

export const R74Cases = cases(
  ...onEach(
    [
      'strikeRim/secure/free',
      'exitTrim/secure/free',
      'exitTrim/safe/stairReentry',
      'latchRetractionMotor/secure/free',
      'glassRailExit/secure/free',
    ],
    'hall for 50',
    hall,
    'yes',
    { clause: 'a', does: 'permit' },
  ),
  ...onEach(
    [
      'mortiseLock/secure/free',
      'magnet/safe/doorSwitch',
      'delayedExitDevice/safe/delayed',
      'strikeRim/secure/none',
    ],
    'not meant',
    hall,
    'no',
    'a',
  ),
  ...around('a', 'exitTrim/secure/free'),
  ...onEach(['delayedExitDevice/safe/delayed', 'delayedMagnet/safe/delayed'], 'hall for 50', hall, 'yes', {
    clause: 'b',
    does: 'caution',
  }),
  ...onEach(['exitTrim/secure/free', 'magnet/safe/sensor'], 'not meant', hall, 'no', 'b'),
  ...around('b', 'delayedExitDevice/safe/delayed'),
);

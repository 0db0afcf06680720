import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

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

export const R74 = defineRule({
  id: 'R-74',
  title: 'Ways to add access control to panic hardware',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('delayedEgress')],
  confidence: 'secondary',
  why: 'The bar opens the door whatever the electrified part does, so the outside may be controlled freely.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: yes('panicRequired'),
      of: { exitDevice: true, release: ['free', 'stairReentry'] },
      says: 'A strike behind the bar, electrified outside trim or electric latch retraction is allowed here, because one push on the bar always opens the door.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('panicRequired'),
      of: { release: ['delayed'] },
      says: 'Panic hardware with a delay is allowed only where the use of the space allows delayed egress at all; assembly, schools and high hazard nearly never do.',
    },
  ],
  cases: cases(
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
  ),
});

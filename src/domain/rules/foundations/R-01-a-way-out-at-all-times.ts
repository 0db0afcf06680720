import { text, under } from '../../codes/sections.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const noRelease = [
  'magnet/safe/none',
  'strikeMortise/secure/none',
  'strikeRim/safe/none',
  'boltSolenoid/secure/none',
  'glassPatchLock/safe/none',
];

/**
 * A door across a corridor is asked about; elsewhere two ways of leaving count where somebody says so. Horizontal
 * exits are judged by R-67, stairs by their own rules, and a double-egress pair has a leaf for each way.
 */
const bothWays = all(
  is('exitDirection', 'both'),
  any(
    is('egressRole', 'crossCorridor'),
    all(
      isKnown('exitDirection'),
      is('egressRole', 'exitAccess', 'exteriorExit', 'exteriorSpace', 'egressCourt', 'dischargeGate'),
    ),
  ),
  not(is('doorType', 'doubleEgressPair')),
);
/** Delay and release by staff act on both ways alike and go to a reviewer anyway. */
const locksOneSide: CandidateMatch = {
  release: ['free', 'stairReentry', 'sensor', 'doorSwitch', 'keyInside', 'lobby'],
  not: { family: ['mechanical'], release: ['free'] },
};
const across = { egressRole: 'crossCorridor', exitDirection: 'both', doorType: 'single' } as const;

export const R01 = defineRule({
  id: 'R-01',
  title: 'A door people leave by needs a release on its egress side',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa'), text('osha', '1910.36(d)', 'Exit doors')],
  confidence: 'read',
  note: 'Containment by staff, elevator-lobby release and detention are releases of their own and are judged by R-90, R-95, R-103 and R-123; they excuse nothing here.',
  why: 'Without something on the inside that opens the door, a person is shut in the moment the lock engages.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['none'] },
      says: 'People leave by this door, and this lock has nothing on the inside that opens it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: bothWays,
      of: locksOneSide,
      says: 'People leave through this door both ways, so whatever locks one side locks somebody’s way out; it may have a passage latch or push and pull, and a reader belongs on another door.',
    },
  ],
  cases: cases(
    ...onEach(
      ['mortiseLock/safe/stairReentry', 'magnet/safe/lobby'],
      'corridor, both ways',
      across,
      'yes',
      'b',
    ),
    ...onEach(noRelease, 'room door, nothing inside', { egressRole: 'exitAccess' }, 'yes', 'a'),
    ...onEach(
      noRelease.slice(0, 2),
      'cabinet that nobody can enter',
      { egressRole: 'noOccupiedSpace' },
      'no',
      'a',
    ),
    ['opening sealed off', { egressRole: 'sealedOff' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
    [
      'surplus door people can use',
      { egressRole: 'convenience' },
      'yes',
      { clause: 'a', on: 'magnet/safe/none', does: 'prohibit' },
    ],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
    ...onEach(
      ['magnet/safe/sensor', 'magnet/safe/alarmOnly', 'strikeRim/secure/free', 'detentionLock/none/attended'],
      'some release is there',
      { egressRole: 'exitAccess' },
      'no',
      'a',
    ),
    [
      'no code chosen: the federal workplace rule still holds',
      { egressRole: 'exitAccess' },
      'yes',
      { clause: 'a', on: 'magnet/safe/none', basis: { ibc: null } },
    ],
    ...(
      [
        'crossCorridor',
        'exitAccess',
        'exteriorExit',
        'exteriorSpace',
        'egressCourt',
        'dischargeGate',
      ] as const
    ).flatMap((egressRole): readonly CaseRow[] => [
      [
        `both ways, ${egressRole}`,
        { ...across, egressRole },
        'yes',
        { clause: 'b', on: 'mortiseLock/secure/free', does: 'prohibit' },
      ],
      [
        `one way, ${egressRole}`,
        { ...across, egressRole, exitDirection: 'towardSecure' },
        'no',
        { clause: 'b', on: 'mortiseLock/secure/free' },
      ],
    ]),
    [
      'across a corridor, direction not known',
      { egressRole: 'crossCorridor', doorType: 'single' },
      'unknown',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'room door, direction not known',
      { egressRole: 'exitAccess', doorType: 'single' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'a leaf for each way',
      { ...across, doorType: 'doubleEgressPair' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'stair door',
      { ...across, egressRole: 'stairEntry' },
      'no',
      { clause: 'b', on: 'mortiseLock/safe/stairReentry' },
    ],
    ...onEach(
      [
        'strikeMortise/secure/free',
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
        'mechanicalLock/none/keyInside',
      ],
      'across a corridor, both ways',
      across,
      'yes',
      'b',
    ),
    ...onEach(
      ['mechanicalLock/none/free', 'delayedExitDevice/safe/delayed', 'mortiseLock/safe/controlled'],
      'across a corridor, both ways',
      across,
      'no',
      'b',
    ),
  ),
});

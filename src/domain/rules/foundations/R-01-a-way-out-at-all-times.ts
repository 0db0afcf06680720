import { text, under } from '../../codes/sections.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { locksOutside, outsideNotKnownFree } from '../../arrangement/leafLocks.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const noRelease = [
  'magnet/safe/none',
  'strikeMortise/secure/none',
  'strikeRim/safe/none',
  'boltSolenoid/secure/none',
  'glassPatchLock/safe/none',
];

/** Horizontal exits are judged by R-67, elevator lobbies by R-94, stairs by their own rules. */
const bothWays = all(yes('peopleOnLockedSide'), not(is('egressRole', 'horizontalExit', 'elevatorLobby')));
/** A lock worked by hand, the trim of a delayed bar, and whatever stays beside a magnet or bolt. */
const staysBesidePeople: CandidateMatch = {
  device: [
    'mechanicalLock',
    'delayedExitDevice',
    'magnet',
    'shearMagnet',
    'delayedMagnet',
    'boltSolenoid',
    'boltMotor',
  ],
  not: { release: ['keyInside'] },
};
/** Release by staff acts on both ways alike and goes to a reviewer anyway; a delayed bar has a trim for the other way. */
const locksOneSide: CandidateMatch = {
  release: ['free', 'stairReentry', 'sensor', 'doorSwitch', 'keyInside', 'lobby'],
  not: { family: ['mechanical'], release: ['free'] },
};
const across = { egressRole: 'crossCorridor', exitDirection: 'both', doorType: 'single' } as const;

export const R01 = defineRule({
  id: 'R-01',
  title: 'An egress door needs a release on its egress side',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa'), text('osha', '1910.36(d)', 'Exit doors')],
  confidence: 'read',
  note: 'Containment by staff, elevator-lobby release and detention are releases of their own and are judged by R-90, R-95, R-103 and R-123; they excuse nothing here.',
  why: 'Without something on the inside that opens the door, a person is locked in the moment the lock engages.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['none'] },
      says: 'This is an egress door, and this lock has nothing on the inside that opens it.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: bothWays,
      of: locksOneSide,
      says: 'This door is used for egress in both directions, so locking either side locks someone’s exit; it may have a passage latch or push/pull, and the reader belongs on another door.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['passageFunction'],
      when: all(yes('peopleOnLockedSide'), outsideNotKnownFree),
      of: staysBesidePeople,
      says: 'People leave from the locked side too, so the lever or trim on that side is free at all hours: passage function, whatever is installed now.',
    },
    {
      key: 'd',
      effect: 'require',
      items: ['delayBothSides'],
      when: yes('peopleOnLockedSide'),
      of: { device: ['delayedMagnet'] },
      says: 'People leave from both sides, so the bar that starts the delay is on both.',
    },
    {
      key: 'e',
      effect: 'finding',
      field: 'lockFunction',
      severity: 'warn',
      when: all(yes('peopleOnLockedSide'), locksOutside),
      says: 'People leave from the locked side too, and the lock on the leaf locks that side: it locks them in until its function is changed.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('peopleOnLockedSide'), locksOutside),
      of: staysBesidePeople,
      says: 'The lock on the leaf locks a side that people leave from; a reviewer confirms that it was changed to passage.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'mechanicalLock/none/free',
        'delayedExitDevice/safe/delayed',
        'magnet/safe/controlled',
        'boltMotor/safe/lobby',
      ],
      'both ways, function not surveyed',
      across,
      'yes',
      { clause: 'c', does: ['passageFunction'] },
    ),
    ...onEach(
      ['mechanicalLock/none/keyInside', 'mortiseLock/safe/controlled', 'noLock/none/free'],
      'both ways, not meant',
      across,
      'no',
      'c',
    ),
    [
      'both ways, passage',
      { ...across, lockFunction: 'passage' },
      'no',
      { clause: 'c', on: 'mechanicalLock/none/free' },
    ],
    [
      'both ways, storeroom lock',
      { ...across, lockFunction: 'storeroom' },
      'yes',
      { clause: 'c', on: 'mechanicalLock/none/free' },
    ],
    [
      'lobby with no other way out',
      { egressRole: 'elevatorLobby', lobbyHasOtherExit: false },
      'yes',
      { clause: 'c', on: 'mechanicalLock/none/free' },
    ],
    [
      'one way',
      { ...across, exitDirection: 'towardSecure' },
      'no',
      { clause: 'c', on: 'mechanicalLock/none/free' },
    ],
    [
      'direction not known',
      { egressRole: 'crossCorridor', doorType: 'single' },
      'unknown',
      { clause: 'c', on: 'mechanicalLock/none/free' },
    ],
    [
      'delayed magnet, both ways',
      across,
      'yes',
      { clause: 'd', on: 'delayedMagnet/safe/delayed', does: ['delayBothSides'] },
    ],
    ['delayed bar, both ways', across, 'no', { clause: 'd', on: 'delayedExitDevice/safe/delayed' }],
    [
      'delayed magnet, one way',
      { ...across, exitDirection: 'towardSecure' },
      'no',
      { clause: 'd', on: 'delayedMagnet/safe/delayed' },
    ],
    [
      'delayed magnet, direction not known',
      { egressRole: 'crossCorridor', doorType: 'single' },
      'unknown',
      { clause: 'd', on: 'delayedMagnet/safe/delayed' },
    ],
    ...(['e', 'f'] as const).flatMap((clause): readonly CaseRow[] => {
      const at = clause === 'e' ? { clause } : { clause, on: 'mechanicalLock/none/free' };
      return [
        ...(['storeroom', 'classroom', 'office', 'none'] as const).map(
          (lockFunction): CaseRow => [
            `both ways, ${lockFunction} lock`,
            { ...across, lockFunction },
            'yes',
            { ...at, does: clause === 'e' ? 'warn lockFunction' : 'signOff must' },
          ],
        ),
        ['both ways, passage', { ...across, lockFunction: 'passage' }, 'no', at],
        ['both ways, function not surveyed', across, 'unknown', at],
        [
          'one way, storeroom lock',
          { ...across, exitDirection: 'towardSecure', lockFunction: 'storeroom' },
          'no',
          at,
        ],
      ];
    }),
    [
      'a lock that takes the place of it',
      { ...across, lockFunction: 'storeroom' },
      'no',
      { clause: 'f', on: 'mortiseLock/safe/controlled' },
    ],
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

import { text, under } from '../../codes/sections.ts';
import type { CandidateMatch } from '../../devices/candidates.ts';
import { locksOutside, outsideNotKnownFree } from '../../arrangement/leafLocks.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});

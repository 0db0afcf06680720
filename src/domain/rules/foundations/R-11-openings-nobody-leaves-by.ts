import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const holding = [
  'magnet/safe/none',
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'magnet/safe/controlled',
  'magnet/safe/lobby',
  'magnet/safe/credentialOut',
  'magnet/safe/buttonOnly',
  'magnet/safe/alarmOnly',
  'mortiseLock/secure/clinical',
  'delayedMagnet/safe/delayed',
  'mechanicalLock/none/keyInside',
  'detentionLock/none/attended',
];

export const R11 = defineRule({
  id: 'R-11',
  title: 'Openings with no egress duty may be locked, once a reviewer agrees',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc')],
  confidence: 'memory',
  why: 'A cabinet or a sealed-off opening has no egress duty, but someone may have misjudged the size or the sealing.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'noOccupiedSpace', 'vehicleDoor', 'sealedOff'),
      of: { not: { release: ['free', 'stairReentry'] } },
      says: 'This lock is allowed only because no one has to leave by this opening: no one can be behind it, or people have another door. A reviewer confirms that.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: all(
        is('egressRole', 'noOccupiedSpace', 'vehicleDoor', 'sealedOff'),
        any(yes('exitSign'), yes('hasExitDevice')),
      ),
      says: 'The opening is entered as having no egress duty, yet it has an exit sign or an exit device; remove these or enter its true role.',
    },
  ],
  cases: cases(
    ...onEach(holding, 'cabinet', { egressRole: 'noOccupiedSpace' }, 'yes', 'a'),
    [
      'sealed off',
      { egressRole: 'sealedOff' },
      'yes',
      { clause: 'a', on: 'magnet/safe/none', does: 'signOff must' },
    ],
    ['vehicle door', { egressRole: 'vehicleDoor' }, 'yes', { clause: 'a', on: 'boltMotor/secure/none' }],
    ['room door', { egressRole: 'exitAccess' }, 'no', { clause: 'a', on: 'magnet/safe/none' }],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/none' }],
    ...onEach(
      ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry'],
      'a lock that opens freely',
      { egressRole: 'noOccupiedSpace' },
      'no',
      'a',
    ),
    [
      'sealed off, exit sign over it',
      { egressRole: 'sealedOff', exitSign: true, panicPresent: false, latch: 'bored' },
      'yes',
      { clause: 'b', does: 'refuse egressRole' },
    ],
    [
      'sealed off, push bar on it',
      { egressRole: 'sealedOff', exitSign: false, panicPresent: true },
      'yes',
      { clause: 'b' },
    ],
    [
      'cage with a rim device',
      { egressRole: 'noOccupiedSpace', exitSign: false, latch: 'rimExit' },
      'yes',
      { clause: 'b' },
    ],
    [
      'sealed off, neither',
      { egressRole: 'sealedOff', exitSign: false, panicPresent: false, latch: 'bored' },
      'no',
      { clause: 'b' },
    ],
    [
      'room door with both',
      { egressRole: 'exitAccess', exitSign: true, panicPresent: true },
      'no',
      { clause: 'b' },
    ],
    ['sealed off, not looked at', { egressRole: 'sealedOff' }, 'unknown', { clause: 'b' }],
  ),
});

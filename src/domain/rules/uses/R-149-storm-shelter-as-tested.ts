import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R149 = defineRule({
  id: 'R-149',
  title: 'A storm shelter door stays as it was tested',
  family: 'uses',
  book: 'icc500',
  cites: [under('stormShelters'), text('icc500', '', 'Storm shelter doors')],
  confidence: 'secondary',
  why: 'Leaf, frame and hardware were struck by debris as one assembly, and a changed part was never struck.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: is('roomUse', 'stormShelter'),
      items: ['testedShelterAssembly'],
      says: 'Only the tested assembly, electrified only as its listing shows; it locks from inside and still opens by one motion.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('roomUse', 'stormShelter'),
      of: { failMode: ['safe'], keepsLatch: false },
      says: 'Storms take the power away, and this device would let go of the door.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(is('roomUse', 'stormShelter'), any(yes('wishUnlockOnAlarm'), yes('wishScheduledUnlock'))),
      says: 'A schedule or a fire alarm that unlocks the outside could open the shelter during the storm; a reviewer says how shelter mode stops it.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'stormShelter'),
      says: 'A reviewer compares every part with the listing of the shelter door.',
    },
  ],
  cases: cases(
    ['shelter', { roomUse: 'stormShelter' }, 'yes', { clause: 'a', does: ['testedShelterAssembly'] }],
    ['shelter', { roomUse: 'stormShelter' }, 'yes', { clause: 'd', does: 'signOff must' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'a' }],
    ['office', { roomUse: 'office' }, 'no', { clause: 'd' }],
    ['room not known', {}, 'unknown', { clause: 'a' }],
    ['room not known', {}, 'unknown', { clause: 'd' }],
    [
      'lets go without power',
      { roomUse: 'stormShelter' },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', does: 'prohibit' },
    ],
    [
      'lets go without power',
      { roomUse: 'stormShelter' },
      'yes',
      { clause: 'b', on: 'strikeMortise/safe/free' },
    ],
    [
      'fail-safe lock keeps its latch',
      { roomUse: 'stormShelter' },
      'no',
      { clause: 'b', on: 'mortiseLock/safe/free' },
    ],
    [
      'fail-secure strike holds the latch',
      { roomUse: 'stormShelter' },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ['office', { roomUse: 'office' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['room not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor' }],
    [
      'unlocks on alarm',
      { roomUse: 'stormShelter', wishUnlockOnAlarm: true, wishScheduledUnlock: false },
      'yes',
      { clause: 'c', does: 'caution' },
    ],
    [
      'unlocks at hours',
      { roomUse: 'stormShelter', wishUnlockOnAlarm: false, wishScheduledUnlock: true },
      'yes',
      { clause: 'c' },
    ],
    [
      'neither',
      { roomUse: 'stormShelter', wishUnlockOnAlarm: false, wishScheduledUnlock: false },
      'no',
      { clause: 'c' },
    ],
    [
      'office',
      { roomUse: 'office', wishUnlockOnAlarm: true, wishScheduledUnlock: true },
      'no',
      { clause: 'c' },
    ],
    ['wishes not known', { roomUse: 'stormShelter' }, 'unknown', { clause: 'c' }],
  ),
});

import { text, under } from '../../codes/sections.ts';
import { all, any, nfpa101, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R159 = defineRule({
  id: 'R-159',
  title: 'Annual inspection goes in the schedule notes',
  family: 'access',
  book: 'nfpa101',
  cites: [
    under('doorInspectionNfpa'),
    text('nfpa80', '5.2', 'Inspection and testing'),
    text('ifc', '705', 'Opening protectives'),
  ],
  confidence: 'secondary',
  why: 'Egress and fire door hardware wears out, so it has to be inspected.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(nfpa101(), any(yes('hasExitDevice'), yes('isStairDoor'))),
      items: ['yearlyInspection'],
      says: 'NFPA 101 requires annual inspection of doors with exit devices and of stair doors where the occupancy chapter calls for it.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(nfpa101(), yes('isEgress')),
      of: { release: ['delayed', 'sensor', 'doorSwitch'] },
      items: ['yearlyInspection'],
      says: 'NFPA 101 requires annual inspection of doors with this kind of electric release where the occupancy chapter calls for it.',
    },
    {
      key: 'c',
      effect: 'require',
      when: yes('fireRated'),
      items: ['yearlyInspection'],
      says: 'A fire door is inspected and tested every year, whichever building code is adopted.',
    },
  ],
  cases: cases(
    [
      'exit device',
      { latch: 'rimExit', panicPresent: true, egressRole: 'exteriorExit' },
      'yes',
      { clause: 'a', basis: { nfpa101: 2021 }, does: ['yearlyInspection'] },
    ],
    [
      'stair door',
      { latch: 'bored', panicPresent: false, egressRole: 'stairEntry' },
      'yes',
      { clause: 'a', basis: { nfpa101: 2021 } },
    ],
    [
      'lever on a room',
      { latch: 'bored', panicPresent: false, egressRole: 'exitAccess' },
      'no',
      { clause: 'a', basis: { nfpa101: 2021 } },
    ],
    ['IBC alone', { latch: 'rimExit', panicPresent: true, egressRole: 'stairEntry' }, 'no', { clause: 'a' }],
    ['latch not seen', { egressRole: 'exitAccess' }, 'unknown', { clause: 'a', basis: { nfpa101: 2021 } }],
    [
      'electric release',
      { egressRole: 'exitAccess' },
      'yes',
      { clause: 'b', on: 'delayedMagnet/safe/delayed', basis: { nfpa101: 2021 }, does: ['yearlyInspection'] },
    ],
    [
      'electric release',
      { egressRole: 'exitAccess' },
      'yes',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
    [
      'electric release',
      { egressRole: 'exitAccess' },
      'yes',
      { clause: 'b', on: 'magnet/safe/doorSwitch', basis: { nfpa101: 2021 } },
    ],
    [
      'free lever',
      { egressRole: 'exitAccess' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free', basis: { nfpa101: 2021 } },
    ],
    [
      'cabinet',
      { egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } },
    ],
    ['IBC alone', { egressRole: 'exitAccess' }, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ['role not known', {}, 'unknown', { clause: 'b', on: 'magnet/safe/sensor', basis: { nfpa101: 2021 } }],
    ['fire door', { fireRatingMin: 20 }, 'yes', { clause: 'c', does: ['yearlyInspection'] }],
    ['no fire door', { fireRatingMin: 0, wallRatingMin: 0 }, 'no', { clause: 'c' }],
    ['rating not known', {}, 'unknown', { clause: 'c' }],
  ),
});

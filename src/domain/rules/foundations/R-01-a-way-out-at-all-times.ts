import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const noRelease = [
  'magnet/safe/none',
  'strikeMortise/secure/none',
  'strikeRim/safe/none',
  'boltSolenoid/secure/none',
  'glassPatchLock/safe/none',
];

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
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['none'] },
      says: 'People leave by this door, and this lock has nothing on the inside that opens it.',
    },
  ],
  cases: cases(
    ...onEach(noRelease, 'room door, nothing inside', { egressRole: 'exitAccess' }, 'yes'),
    ...onEach(
      noRelease.slice(0, 2),
      'cabinet that nobody can enter',
      { egressRole: 'noOccupiedSpace' },
      'no',
    ),
    ['opening sealed off', { egressRole: 'sealedOff' }, 'no', { on: 'magnet/safe/none' }],
    ['surplus door people can use', { egressRole: 'convenience' }, 'yes', { on: 'magnet/safe/none' }],
    ['role not known', {}, 'unknown', { on: 'magnet/safe/none' }],
    ...onEach(
      ['magnet/safe/sensor', 'magnet/safe/alarmOnly', 'strikeRim/secure/free', 'detentionLock/none/attended'],
      'some release is there',
      { egressRole: 'exitAccess' },
      'no',
    ),
    [
      'no code chosen: the federal workplace rule still holds',
      { egressRole: 'exitAccess' },
      'yes',
      { on: 'magnet/safe/none', basis: { ibc: null } },
    ],
  ),
});

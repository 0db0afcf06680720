import { under } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const room = { egressRole: 'exitAccess', occupancyGroup: 'H-2' } as const;
const on = 'magnet/safe/sensor';

export const R19 = defineRule({
  id: 'R-19',
  title: 'No sensor or hardware-switch release in high hazard',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('hardwareRelease')],
  confidence: 'read',
  note: 'Read for door-hardware release; for sensor release from general knowledge. Applied also where NFPA 101 stands alone, because refusing is the safe side.',
  why: 'Where a room can burst into flame, people have seconds, and no electric part may stand between them and the outside.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(yes('isEgress'), yes('groupH')),
      of: { release: ['sensor', 'doorSwitch'] },
      says: 'This is a high-hazard space; locks that must be released by a sensor or a switch are not allowed there.',
    },
  ],
  cases: cases(
    ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
      (occupancyGroup): CaseRow => [
        `group ${occupancyGroup}`,
        { ...room, occupancyGroup },
        'yes',
        { on, does: 'prohibit' },
      ],
    ),
    ['ordinary factory', { ...room, occupancyGroup: 'F-1' }, 'no', { on }],
    ['group not known', { egressRole: 'exitAccess' }, 'unknown', { on }],
    ['cabinet', { ...room, egressRole: 'noOccupiedSpace' }, 'no', { on }],
    ['NFPA 101 alone', room, 'yes', { on, basis: { ibc: null, nfpa101: 2021 } }],
    ...onEach(
      ['magnet/safe/doorSwitch', 'boltMotor/safe/doorSwitch', 'glassPatchLock/safe/sensor'],
      'high hazard',
      room,
      'yes',
    ),
    ...onEach(['exitTrim/secure/free', 'magnet/safe/none'], 'another release', room, 'no'),
  ),
});

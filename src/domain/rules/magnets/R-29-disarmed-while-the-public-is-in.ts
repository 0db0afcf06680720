import { text, under } from '../../codes/sections.ts';
import { all, any, is, nfpa101, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const on = 'magnet/safe/sensor';
const door = {
  egressRole: 'exteriorExit',
  publicEntrance: true,
  cityKeepsPublicDisarm: true,
  occupancyGroup: 'B',
} as const;
const groups = ['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'B', 'E', 'M'] as const;
const nfpa = { nfpa101: 2021 } as const;

const oldClause = all(
  yes('publicEntrance'),
  yes('cityKeepsPublicDisarm'),
  any(yes('groupA'), yes('groupE'), is('occupancyGroup', 'B', 'M')),
);
// The assembly chapter speaks of every door with this lock, not of the entrance alone.
const when = all(yes('isEgress'), any(oldClause, all(nfpa101(), yes('groupA'))));
const rows = (clause: string): readonly CaseRow[] => [
  ...groups.map(
    (occupancyGroup): CaseRow => [
      `group ${occupancyGroup}`,
      { ...door, occupancyGroup },
      'yes',
      { clause, on },
    ],
  ),
  ['hotel', { ...door, occupancyGroup: 'R-1' }, 'no', { clause, on }],
  ['city has no such clause', { ...door, cityKeepsPublicDisarm: false }, 'no', { clause, on }],
  ['staff entrance', { ...door, publicEntrance: false }, 'no', { clause, on }],
  ['sealed off', { ...door, egressRole: 'sealedOff' }, 'no', { clause, on }],
  [
    'city not asked',
    { egressRole: 'exteriorExit', publicEntrance: true, occupancyGroup: 'B' },
    'unknown',
    { clause, on },
  ],
  [
    'theater under NFPA 101',
    { ...door, cityKeepsPublicDisarm: false, occupancyGroup: 'A-1' },
    'yes',
    { clause, on, basis: nfpa },
  ],
  [
    'theater under the IBC alone',
    { ...door, cityKeepsPublicDisarm: false, occupancyGroup: 'A-1' },
    'no',
    { clause, on },
  ],
  [
    'side door of a theater under NFPA 101',
    { ...door, publicEntrance: false, occupancyGroup: 'A-1' },
    'yes',
    { clause, on, basis: nfpa },
  ],
  ['office under NFPA 101', { ...door, cityKeepsPublicDisarm: false }, 'no', { clause, on, basis: nfpa }],
  ...onEach(['magnet/safe/doorSwitch', 'mortiseLock/secure/free'], 'no sensor', door, 'no', clause),
  ...onEach(['boltMotor/safe/sensor'], 'bolt with sensor', door, 'yes', clause),
];

export const R29 = defineRule({
  id: 'R-29',
  title: 'Sensor-released door off while the public is in',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('sensorReleaseNfpa'),
    text('nfpa101', '12.2.2.2.5', 'Assembly locking'),
  ],
  confidence: 'secondary',
  note: 'The old IBC clause was read and speaks of entrances; current editions no longer carry it, so it applies only where the city keeps it. That the NFPA 101 assembly chapter means every such door while the space is occupied: second-hand and general knowledge.',
  why: 'A crowd of strangers should not depend on a sensor at the door they came in by.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['publicHoursDisarm'],
      when,
      of: { release: ['sensor'] },
      says: 'The lock is switched off on the egress side as long as the public is in; under NFPA 101 an assembly space whenever anybody uses it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when,
      of: { release: ['sensor'] },
      says: 'A reviewer confirms the hours and how the lock is switched off while the public is inside.',
    },
  ],
  cases: cases(...doing({ a: ['publicHoursDisarm'], b: 'signOff must' }, [...rows('a'), ...rows('b')])),
});

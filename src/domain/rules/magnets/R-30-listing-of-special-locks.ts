import { text, under } from '../../codes/sections.ts';
import { all, ibc, not, yes } from '../../logic/condition.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const special = [
  'magnet/safe/sensor',
  'magnet/safe/doorSwitch',
  'delayedExitDevice/safe/delayed',
  'mortiseLock/safe/controlled',
  'mortiseLock/safe/lobby',
];
const rest = ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry', 'mechanicalLock/none/clinical'];
const room = { egressRole: 'exitAccess' } as const;
const rows = (clause: string, basis: CaseRow[3]): readonly CaseRow[] => [
  ...special.map((on): CaseRow => [on, room, 'yes', { ...basis, clause, on }]),
  ...rest.map((on): CaseRow => [on, room, 'no', { ...basis, clause, on }]),
  ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { ...basis, clause, on: 'magnet/safe/sensor' }],
  ['role not known', {}, 'unknown', { ...basis, clause, on: 'magnet/safe/sensor' }],
];

export const R30 = defineRule({
  id: 'R-30',
  title: 'Special locks carry their listing',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('hardwareRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    text('ul', 'UL 294, UL 1034'),
  ],
  confidence: 'read',
  note: 'Free-exit locks need no such listing in these sections; some authorities ask for it on every wire.',
  why: 'The listing says that the lock was tested to let go when power or the release signal is lost.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['listedLock'],
      when: all(yes('isEgress'), not(ibc({ from: 2024, readTo: 2024 }))),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'lobby'] },
      says: 'The units of this locking system are listed to UL 294.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['listedLock'],
      when: all(yes('isEgress'), ibc({ from: 2024, readTo: 2024 })),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'lobby'] },
      says: 'The lock itself is listed to UL 294 or UL 1034.',
    },
  ],
  cases: cases(
    ...doing({ b: ['listedLock'] }, [
      ...rows('a', {}),
      [
        '2018',
        room,
        'yes',
        { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: 2018 }, does: ['listedLock'] },
      ],
      ['2024 is clause b', room, 'no', { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: 2024 } }],
      [
        'NFPA 101 alone',
        room,
        'yes',
        { clause: 'a', on: 'magnet/safe/sensor', basis: { ibc: null, nfpa101: 2024 } },
      ],
      ...rows('b', { basis: { ibc: 2024 } }),
      ['2021 is clause a', room, 'no', { clause: 'b', on: 'magnet/safe/sensor' }],
    ]),
  ),
});

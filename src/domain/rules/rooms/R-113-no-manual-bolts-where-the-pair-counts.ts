import { under } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  egressRole: 'exitAccess',
  doorType: 'pair',
  roomUse: 'conference',
  occupancyGroup: 'A-3',
  inactiveBolts: 'manualFlush',
  inactiveNeededForCapacity: true,
} as const;
const spare = { ...pair, inactiveNeededForCapacity: false } as const;

const boltedPair = all(
  yes('isEgress'),
  yes('isPair'),
  is('inactiveBolts', 'manualFlush'),
  not(is('roomUse', 'storage', 'equipment')),
);
/** The list of the code names business, factory and storage pairs, and doors inside a unit nobody needs. */
const notListed = not(is('occupancyGroup', 'B', 'F-1', 'F-2', 'S-1', 'S-2'));
const insideUnit = is('roomUse', 'dwellingBedroom', 'unitBalcony');

function around(clause: string, facts: typeof pair | typeof spare): readonly CaseRow[] {
  return [
    ['assembly pair', facts, 'yes', { clause }],
    ['school pair', { ...facts, occupancyGroup: 'E' }, 'yes', { clause }],
    ['shop pair', { ...facts, occupancyGroup: 'M' }, 'yes', { clause }],
    ...(['H-3', 'I-2', 'R-1'] as const).map(
      (occupancyGroup): CaseRow => [
        `pair in ${occupancyGroup}`,
        { ...facts, occupancyGroup },
        'yes',
        { clause },
      ],
    ),
    ...(['B', 'F-1', 'F-2', 'S-1', 'S-2'] as const).map(
      (occupancyGroup): CaseRow => [
        `pair in ${occupancyGroup}, R-112`,
        { ...facts, occupancyGroup },
        'no',
        { clause },
      ],
    ),
    ['bedroom of a unit', { ...facts, occupancyGroup: 'R-2', roomUse: 'dwellingBedroom' }, 'no', { clause }],
    ['balcony of a unit', { ...facts, occupancyGroup: 'R-2', roomUse: 'unitBalcony' }, 'no', { clause }],
    ['group not known', without(facts, 'occupancyGroup'), 'unknown', { clause }],
    ['automatic bolts', { ...facts, inactiveBolts: 'automaticFlush' }, 'no', { clause }],
    ['single leaf', { ...facts, doorType: 'single' }, 'no', { clause }],
    ['storage room, R-111', { ...facts, roomUse: 'storage' }, 'no', { clause }],
    ['equipment room, R-111', { ...facts, roomUse: 'equipment' }, 'no', { clause }],
    ['cabinet', { ...facts, egressRole: 'noOccupiedSpace' }, 'no', { clause }],
    ['need not known', without(facts, 'inactiveNeededForCapacity'), 'unknown', { clause }],
  ];
}

export const R113 = defineRule({
  id: 'R-113',
  title: 'No manual bolts where both leaves count',
  family: 'rooms',
  book: 'ibc',
  cites: [under('boltLocks')],
  confidence: 'secondary',
  note: 'The closed list of pairs that may have bolts worked by hand was read second-hand; that it leaves out every other group alike follows from it. The table of 2024 was not seen and may add mercantile.',
  why: 'In a crowd nobody stoops to pull a flush bolt.',
  clauses: [
    {
      key: 'b',
      effect: 'require',
      when: all(boltedPair, notListed, not(insideUnit), yes('inactiveNeededForCapacity')),
      items: ['automaticFlushBolts'],
      says: 'Both leaves are needed for people to leave, so the manual bolts give way to bolts that draw by themselves, or to exit devices on both leaves.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'should',
      when: all(boltedPair, notListed, not(insideUnit), no('inactiveNeededForCapacity')),
      says: 'Manual bolts are named for business, factory and storage pairs only; have somebody confirm that this leaf need not serve people.',
    },
  ],
  cases: cases(
    ...doing({ b: ['automaticFlushBolts'], c: 'signOff should' }, [
      ...around('b', pair),
      ['leaf not needed', spare, 'no', { clause: 'b' }],
      ...around('c', spare),
      ['leaf needed', pair, 'no', { clause: 'c' }],
    ]),
  ),
});

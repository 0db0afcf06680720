import { under } from '../../codes/sections.ts';
import { all, any, is, no, not, yes } from '../../logic/condition.ts';
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
const crowd = any(yes('groupA'), yes('groupE'), is('occupancyGroup', 'M'));

function around(clause: string, facts: typeof pair | typeof spare): readonly CaseRow[] {
  return [
    ['assembly pair', facts, 'yes', { clause }],
    ['school pair', { ...facts, occupancyGroup: 'E' }, 'yes', { clause }],
    ['shop pair', { ...facts, occupancyGroup: 'M' }, 'yes', { clause }],
    ['office pair, R-112', { ...facts, occupancyGroup: 'B' }, 'no', { clause }],
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
  why: 'In a crowd nobody stoops to pull a flush bolt.',
  clauses: [
    {
      key: 'b',
      effect: 'require',
      when: all(boltedPair, crowd, yes('inactiveNeededForCapacity')),
      items: ['automaticFlushBolts'],
      says: 'Both leaves are needed for people to leave, so the manual bolts give way to bolts that draw by themselves, or to exit devices on both leaves.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'should',
      when: all(boltedPair, crowd, no('inactiveNeededForCapacity')),
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

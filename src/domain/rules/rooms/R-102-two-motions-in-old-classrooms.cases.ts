import { onEach } from '../onEach.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const alone = { ibc: null, nfpa101: 2021 } as const;

const alone2018 = { ibc: null, nfpa101: 2018 } as const;

const old = {
  roomUse: 'classroom',
  workStatus: 'existing',
  egressRole: 'exitAccess',
  latch: 'boredPlusDeadbolt',
  panicPresent: false,
} as const;

/** Where the rule does not speak at all, for a clause that would otherwise say yes to `facts` under `basis`. */
function elsewhere(
  clause: string,
  facts: Parameters<typeof without>[0],
  book: typeof alone | typeof alone2018,
  on?: string,
): readonly CaseRow[] {
  const at = { clause, basis: book, ...(on === undefined ? {} : { on }) };
  return [
    ['office', { ...facts, roomUse: 'office' }, 'no', at],
    ['new classroom', { ...facts, workStatus: 'new' }, 'no', at],
    ['cabinet', { ...facts, egressRole: 'noOccupiedSpace' }, 'no', at],
    ['one motion', { ...facts, latch: 'mortise', existingArrangement: 'freeLever' }, 'no', at],
    ['IBC beside it, see R-08', facts, 'no', { ...at, basis: { nfpa101: book.nfpa101 } }],
    ['no book', facts, 'no', { ...at, basis: { ibc: null } }],
  ];
}

export const R102Cases = cases(
  ...onEach(
    [
      'strikeCylindrical/secure/free',
      'magnet/safe/sensor',
      'boltMotor/safe/sensor',
      'delayedMagnet/safe/delayed',
    ],
    'panic hardware fitted',
    { ...old, panicPresent: true },
    'yes',
    'a',
  ).map(([name, facts, expect, options]): CaseRow => [name, facts, expect, { ...options, basis: alone }]),
  [
    'a new lock replaces both',
    { ...old, panicPresent: true },
    'no',
    { clause: 'a', on: 'mortiseLock/secure/free', basis: alone },
  ],
  [
    '2018 as printed',
    { ...old, tia1436Adopted: false },
    'yes',
    { clause: 'a', on: 'strikeCylindrical/secure/free', basis: alone2018, does: 'prohibit' },
  ],
  [
    '2018 as amended',
    { ...old, tia1436Adopted: true },
    'no',
    { clause: 'a', on: 'strikeCylindrical/secure/free', basis: alone2018 },
  ],
  [
    '2018, amendment not known',
    old,
    'unknown',
    { clause: 'a', on: 'strikeCylindrical/secure/free', basis: alone2018 },
  ],
  [
    '2021',
    { ...old, tia1436Adopted: false },
    'no',
    { clause: 'a', on: 'strikeCylindrical/secure/free', basis: alone },
  ],
  [
    '2021, panic hardware not known',
    without(old, 'panicPresent'),
    'unknown',
    { clause: 'a', on: 'strikeCylindrical/secure/free', basis: alone },
  ],
  ...elsewhere('a', { ...old, panicPresent: true }, alone, 'strikeCylindrical/secure/free'),
  [
    '2018 as printed',
    { ...old, tia1436Adopted: false },
    'yes',
    { clause: 'b', basis: alone2018, does: 'modify locksmith' },
  ],
  [
    'deadbolt found beside a latch',
    { ...old, latch: 'bored', existingArrangement: 'deadboltPlusLatch', panicPresent: true },
    'yes',
    { clause: 'b', basis: alone },
  ],
  [
    'deadbolt in the survey of the latch only',
    { ...old, existingArrangement: 'freeLever', panicPresent: true },
    'yes',
    { clause: 'b', basis: alone },
  ],
  ['2018 as amended', { ...old, tia1436Adopted: true }, 'no', { clause: 'b', basis: alone2018 }],
  ['2021', { ...old, tia1436Adopted: false }, 'no', { clause: 'b', basis: alone }],
  ['2018, amendment not known', old, 'unknown', { clause: 'b', basis: alone2018 }],
  ...elsewhere('b', { ...old, panicPresent: true }, alone),
  ['2021', { ...old, tia1436Adopted: false }, 'yes', { clause: 'c', basis: alone, does: ['ahjApproval'] }],
  [
    '2021, deadbolt found beside a latch',
    { ...old, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
    'yes',
    { clause: 'c', basis: alone },
  ],
  ['2018 as amended', { ...old, tia1436Adopted: true }, 'yes', { clause: 'c', basis: alone2018 }],
  ['2018 as printed', { ...old, tia1436Adopted: false }, 'no', { clause: 'c', basis: alone2018 }],
  ['panic hardware fitted', { ...old, panicPresent: true }, 'no', { clause: 'c', basis: alone }],
  ['2018, amendment not known', old, 'unknown', { clause: 'c', basis: alone2018 }],
  ...elsewhere('c', old, alone),
  ['2021', { ...old, tia1436Adopted: false }, 'yes', { clause: 'd', basis: alone, does: 'signOff must' }],
  [
    '2021, deadbolt found beside a latch',
    { ...old, latch: 'bored', existingArrangement: 'deadboltPlusLatch' },
    'yes',
    { clause: 'd', basis: alone },
  ],
  ['2018 as amended', { ...old, tia1436Adopted: true }, 'yes', { clause: 'd', basis: alone2018 }],
  ['2018 as printed', { ...old, tia1436Adopted: false }, 'no', { clause: 'd', basis: alone2018 }],
  ['panic hardware fitted', { ...old, panicPresent: true }, 'no', { clause: 'd', basis: alone }],
  ['2018, amendment not known', old, 'unknown', { clause: 'd', basis: alone2018 }],
  ...elsewhere('d', old, alone),
);

import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const hall = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 120,
  roomUse: 'other',
} as const;
const office = { ...hall, occupancyGroup: 'B' } as const;
const found = ['deadboltPlusLatch', 'doubleCylinder', 'padlock', 'slideBolt', 'barricade'] as const;
const bolts = ['boredPlusDeadbolt', 'mortiseDeadbolt', 'deadboltOnly', 'hookbolt'] as const;
const plain = { latch: 'rimExit', existingArrangement: 'freeBar' } as const;

export const R73 = defineRule({
  id: 'R-73',
  title: 'Nothing else locks a door that needs panic hardware',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('panicHardwareNfpa')],
  confidence: 'secondary',
  why: 'A bolt or chain beside the bar holds the door against the crowd the bar is there for.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(yes('panicWithLock'), is('existingArrangement', ...found)),
      says: 'This door needs panic hardware, and today something else also locks it; have it removed at once.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(yes('panicWithLock'), any(is('existingArrangement', ...found), is('latch', ...bolts))),
      says: 'Remove every deadbolt, surface bolt, chain and padlock; only panic hardware may hold this door.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(yes('panicWithLock'), is('latch', ...bolts)),
      of: { family: ['strike', 'magnet'] },
      says: 'This device leaves the deadbolt on a door that needs panic hardware; the bolt must go first.',
    },
  ],
  cases: cases(
    ...found.flatMap((existingArrangement): readonly CaseRow[] => [
      [
        `${existingArrangement} in a hall`,
        { ...hall, ...plain, existingArrangement },
        'yes',
        { clause: 'a', does: 'warn existingArrangement' },
      ],
      [
        `${existingArrangement} in a hall`,
        { ...hall, ...plain, existingArrangement },
        'yes',
        { clause: 'b', does: 'modify locksmith' },
      ],
    ]),
    ...bolts.flatMap((latch): readonly CaseRow[] => [
      [`${latch} in a hall`, { ...hall, ...plain, latch }, 'yes', { clause: 'b' }],
      [
        `${latch} in a hall`,
        { ...hall, latch },
        'yes',
        { clause: 'c', on: 'magnet/safe/doorSwitch', does: 'prohibit' },
      ],
    ]),
    ['bar alone', { ...hall, ...plain }, 'no', { clause: 'a' }],
    ['bar alone', { ...hall, ...plain }, 'no', { clause: 'b' }],
    ['bar alone', { ...hall, ...plain }, 'no', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
    [
      'office with a chain is R-08',
      { ...office, ...plain, existingArrangement: 'padlock' },
      'no',
      { clause: 'a' },
    ],
    [
      'office with a deadbolt is R-08',
      { ...office, ...plain, latch: 'boredPlusDeadbolt' },
      'no',
      { clause: 'b' },
    ],
    [
      'office with a deadbolt is R-08',
      { ...office, latch: 'boredPlusDeadbolt' },
      'no',
      { clause: 'c', on: 'magnet/safe/doorSwitch' },
    ],
    ['not surveyed', hall, 'unknown', { clause: 'a' }],
    ['not surveyed', hall, 'unknown', { clause: 'b' }],
    ['not surveyed', hall, 'unknown', { clause: 'c', on: 'magnet/safe/doorSwitch' }],
    [
      'strike beside a deadbolt',
      { ...hall, latch: 'mortiseDeadbolt' },
      'yes',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    [
      'a new device replaces the lock',
      { ...hall, latch: 'mortiseDeadbolt' },
      'no',
      { clause: 'c', on: 'exitTrim/secure/free' },
    ],
  ),
});

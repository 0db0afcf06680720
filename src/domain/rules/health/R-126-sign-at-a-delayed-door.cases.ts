import type { FactValues } from '../../model/fields.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const on = 'delayedExitDevice/safe/delayed';

const free = 'exitTrim/secure/free';

const ward = {
  egressRole: 'exitAccess',
  occupancyGroup: 'I-2',
  clinicalNeed: 'containment',
  clinicalArea: 'psychiatric',
  wishNoDelaySign: true,
  wishDelay30s: false,
  swingsWithEgress: true,
} as const;

const office = {
  ...ward,
  occupancyGroup: 'B',
  clinicalNeed: 'none',
  clinicalArea: 'none',
  wishNoDelaySign: false,
} as const;

const long = { wishDelay30s: true, delay30sApproved: true } as const;

const inward30 = { ...office, ...long, swingsWithEgress: false } as const;

/** Each part of the exception missing in turn, for a clause that answers `expect` when the exception does not hold. */
function withoutException(clause: string, expect: 'yes' | 'no', patch: FactValues = {}): readonly CaseRow[] {
  const facts = { ...ward, ...patch };
  const at = { clause, on };
  return [
    ['psychiatric ward', facts, expect === 'yes' ? 'no' : 'yes', at],
    ['business', { ...facts, occupancyGroup: 'B' }, expect, at],
    ['no containment', { ...facts, clinicalNeed: 'securityThreat' }, expect, at],
    ['no treatment area', { ...facts, clinicalArea: 'none' }, expect, at],
    ['NFPA 101 beside it', facts, expect, { ...at, basis: { nfpa101: 2021 } }],
    ['NFPA 101 alone', facts, expect, { ...at, basis: { ibc: null, nfpa101: 2021 } }],
    ['no book', facts, expect, { ...at, basis: { ibc: null } }],
    ['need not known', without(facts, 'clinicalNeed'), 'unknown', at],
  ];
}

export const R126Cases = cases(
  ...doing({ a: 'prohibit', b: ['ahjApproval'], c: 'signOff must' }, [
    ...withoutException('a', 'yes'),
    ['sign accepted', { ...office, wishNoDelaySign: false }, 'no', { clause: 'a', on }],
    ['a free bar', { ...office, wishNoDelaySign: true }, 'no', { clause: 'a', on: free }],
    ...withoutException('b', 'no'),
    ['sign accepted', { ...ward, wishNoDelaySign: false }, 'no', { clause: 'b', on }],
    ['a free bar', ward, 'no', { clause: 'b', on: free }],
    ...withoutException('c', 'no'),
    ['sign accepted', { ...ward, wishNoDelaySign: false }, 'no', { clause: 'c', on }],
    ['a free bar', ward, 'no', { clause: 'c', on: free }],
    ...withoutException('d', 'yes'),
    ['office, 15 s', office, 'yes', { clause: 'd', on, does: ['signDelayed15'] }],
    [
      'office, 30 s approved',
      { ...office, wishDelay30s: true, delay30sApproved: true },
      'no',
      { clause: 'd', on },
    ],
    [
      'office, 30 s not approved',
      { ...office, wishDelay30s: true, delay30sApproved: false },
      'yes',
      { clause: 'd', on },
    ],
    ['office, approved but 15 s wanted', { ...office, delay30sApproved: true }, 'yes', { clause: 'd', on }],
    ['swings toward the user', { ...office, swingsWithEgress: false }, 'no', { clause: 'd', on }],
    ['cabinet', { ...office, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'd', on }],
    ['ward with sign', { ...ward, wishNoDelaySign: false }, 'yes', { clause: 'd', on }],
    ['a free bar', office, 'no', { clause: 'd', on: free }],
    ...withoutException('e', 'yes', { swingsWithEgress: false }),
    [
      'office, swings in',
      { ...office, swingsWithEgress: false },
      'yes',
      { clause: 'e', on, does: ['signDelayedPull'] },
    ],
    ['office, swings out', office, 'no', { clause: 'e', on }],
    [
      'cabinet',
      { ...office, swingsWithEgress: false, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'e', on },
    ],
    [
      'ward with sign, swings in',
      { ...ward, wishNoDelaySign: false, swingsWithEgress: false },
      'yes',
      { clause: 'e', on },
    ],
    ['a free bar', { ...office, swingsWithEgress: false }, 'no', { clause: 'e', on: free }],
    ['swings in, 30 s approved is clause f', inward30, 'no', { clause: 'e', on }],
    ['swings in, 30 s not approved', { ...inward30, delay30sApproved: false }, 'yes', { clause: 'e', on }],
    ['swings in, approved but 15 s wanted', { ...inward30, wishDelay30s: false }, 'yes', { clause: 'e', on }],
    ...withoutException('f', 'yes', { ...long, swingsWithEgress: false }),
    [
      'ward with sign, swings in, 30 s',
      { ...ward, ...long, swingsWithEgress: false, wishNoDelaySign: false },
      'yes',
      { clause: 'f', on },
    ],
    ['swings in, 30 s approved', inward30, 'yes', { clause: 'f', on, does: ['signDelayedPull30'] }],
    ['swings in, 30 s not approved', { ...inward30, delay30sApproved: false }, 'no', { clause: 'f', on }],
    ['swings in, 15 s', { ...inward30, wishDelay30s: false }, 'no', { clause: 'f', on }],
    ['swings out, 30 s approved', { ...inward30, swingsWithEgress: true }, 'no', { clause: 'f', on }],
    ['cabinet', { ...inward30, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'f', on }],
    ['approval not known', without(inward30, 'delay30sApproved'), 'unknown', { clause: 'f', on }],
    ['a free bar', inward30, 'no', { clause: 'f', on: free }],
  ]),
);

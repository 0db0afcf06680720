import { text } from '../../codes/sections.ts';
import { all, any, is, nfpa101, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';

const ward = { occupancyGroup: 'I-2', egressRole: 'exitAccess', lockFunction: 'storeroom' } as const;
const at = { on: 'magnet/safe/controlled', basis: { nfpa101: 2021 } } as const;

export const R167 = defineRule({
  id: 'R-167',
  title: 'One lock per leaf in health care',
  family: 'health',
  book: 'nfpa101',
  cites: [text('nfpa101', '18/19.2.2.2', 'Locks on health-care doors')],
  confidence: 'secondary',
  note: 'Read in the federal form for NFPA 101 of 2012; for later editions from general knowledge.',
  why: 'Staff who open one lock in a fire must not find a second one on the same leaf.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(
        any(nfpa101(), yes('federalHealthCare')),
        is('occupancyGroup', 'I-2'),
        yes('isEgress'),
        is('lockFunction', 'storeroom', 'classroom', 'office'),
      ),
      of: { release: ['delayed', 'controlled', 'clinical', 'sensor', 'doorSwitch'], keepsLatch: false },
      items: ['passageFunction'],
      says: 'Only one lock may hold this leaf. The lockset that stays beside the new lock becomes a passage set, so that it latches and never locks.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'magnet/safe/controlled',
        'boltMotor/safe/controlled',
        'delayedMagnet/safe/delayed',
        'magnet/safe/sensor',
        'magnet/safe/doorSwitch',
      ],
      'storeroom lock stays beside it',
      ward,
      'yes',
      { clause: 'a', does: ['passageFunction'] },
    ).map(
      ([name, facts, expect, options]): CaseRow => [name, facts, expect, { ...options, basis: at.basis }],
    ),
    ['bolt opened by staff', ward, 'no', { ...at, clause: 'a', on: 'boltMotor/safe/credentialOut' }],
    [
      'a lock that takes the place of the old one',
      ward,
      'no',
      { ...at, clause: 'a', on: 'mortiseLock/secure/clinical' },
    ],
    ...(['classroom', 'office'] as const).map(
      (lockFunction): CaseRow => [
        `${lockFunction} lock stays`,
        { ...ward, lockFunction },
        'yes',
        { ...at, clause: 'a' },
      ],
    ),
    ...(['passage', 'none'] as const).map(
      (lockFunction): CaseRow => [
        `${lockFunction} stays`,
        { ...ward, lockFunction },
        'no',
        { ...at, clause: 'a' },
      ],
    ),
    ['function not known', without(ward, 'lockFunction'), 'unknown', { ...at, clause: 'a' }],
    ['office building', { ...ward, occupancyGroup: 'B' }, 'no', { ...at, clause: 'a' }],
    ['cabinet', { ...ward, egressRole: 'noOccupiedSpace' }, 'no', { ...at, clause: 'a' }],
    ['IBC alone, not federal', { ...ward, federalHealthCare: false }, 'no', { clause: 'a', on: at.on }],
    ['IBC alone, federally paid', { ...ward, federalHealthCare: true }, 'yes', { clause: 'a', on: at.on }],
  ),
});

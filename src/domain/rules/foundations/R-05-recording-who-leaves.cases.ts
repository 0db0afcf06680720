import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';

const free = ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry', 'strikeRim/secure/free'];

const rows = (clause: string): readonly CaseRow[] => [
  ...onEach(
    free,
    'inside reader only records',
    { egressRole: 'exitAccess', readerSides: 'recordOut' },
    'yes',
    clause,
  ),
  [
    'reader outside only',
    { egressRole: 'exitAccess', readerSides: 'secure' },
    'no',
    { clause, on: 'mortiseLock/secure/free' },
  ],
  [
    'cabinet',
    { egressRole: 'noOccupiedSpace', readerSides: 'recordOut' },
    'no',
    { clause, on: 'mortiseLock/secure/free' },
  ],
  ['readers not known', { egressRole: 'exitAccess' }, 'unknown', { clause, on: 'mortiseLock/secure/free' }],
  ...onEach(
    ['magnet/safe/sensor', 'mortiseLock/secure/credentialOut'],
    'the lock itself holds people',
    { egressRole: 'exitAccess', readerSides: 'recordOut' },
    'no',
    clause,
  ),
];

export const R05Cases = cases(
  ...doing({ a: 'permit', b: 'caution', c: ['readerInside', 'alarmShunt'] }, [
    ...rows('a'),
    ...rows('b'),
    ...rows('c'),
  ]),
);

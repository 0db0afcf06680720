import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

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

export const R05 = defineRule({
  id: 'R-05',
  title: 'Recording who leaves is allowed on a door that opens freely',
  family: 'foundations',
  book: 'ibc',
  cites: [under('monitoredEgress')],
  confidence: 'read',
  why: 'A reader that only records, or only shunts an alarm, holds no one back.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(yes('isEgress'), is('readerSides', 'recordOut')),
      of: { release: ['free', 'stairReentry'] },
      says: 'The inside reader may record people leaving or shunt the door alarm, because the lever or bar opens the door without it.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isEgress'), is('readerSides', 'recordOut')),
      of: { release: ['free', 'stairReentry'] },
      says: 'Write "monitored egress" in the schedule, so that no one wires the inside reader to the lock later.',
    },
    {
      key: 'c',
      effect: 'require',
      items: ['readerInside', 'alarmShunt'],
      when: all(yes('isEgress'), is('readerSides', 'recordOut')),
      of: { release: ['free', 'stairReentry'] },
      says: 'The inside reader is wired to the record and the local alarm only, never to the lock.',
    },
  ],
  cases: cases(
    ...doing({ a: 'permit', b: 'caution', c: ['readerInside', 'alarmShunt'] }, [
      ...rows('a'),
      ...rows('b'),
      ...rows('c'),
    ]),
  ),
});

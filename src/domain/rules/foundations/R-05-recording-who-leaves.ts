import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

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
});

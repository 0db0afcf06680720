import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R133 = defineRule({
  id: 'R-133',
  title: 'Courtroom doors to the secure side',
  family: 'health',
  book: 'ibc',
  cites: [under('delayedEgress'), under('hardwareRelease'), under('panicHardware')],
  confidence: 'memory',
  note: 'Partly second-hand, partly from general knowledge.',
  why: 'Public egress can cross the path of judges, jury and prisoners.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'courtroom'),
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for a courtroom door that does not simply open by its lever or bar.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('roomUse', 'courtroom'),
      says: 'To the secure corridor the options are a free lever or bar, a switch in that hardware, or delayed egress at a side door in a sprinklered building; panic hardware is required from 50 people, and holding cells are judged as detention.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('roomUse', 'courtroom'),
      of: { release: ['sensor'] },
      says: 'A sensor opens the secure side to anyone who walks up; a switch in the lever or bar is the better release here.',
    },
  ],
});

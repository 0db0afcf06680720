import { text, under } from '../../codes/sections.ts';
import { defineRule } from '../rule.ts';
import { nothingCloses } from './given.ts';

export const R36 = defineRule({
  id: 'R-36',
  title: 'A fire door closes itself',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.1', 'Closing devices')],
  confidence: 'read',
  note: 'The few exceptions (communicating doors between hotel sleeping rooms, elevator doors held on recall) are not asked in the survey; a reviewer applies them.',
  why: 'A leaf that stays open lets fire through, whatever lock is on it.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'closing',
      severity: 'warn',
      when: nothingCloses,
      says: 'Nothing closes this fire door today: it does not protect the opening until a closer or spring hinges are installed.',
    },
    {
      key: 'b',
      effect: 'require',
      when: nothingCloses,
      items: ['closer'],
      says: 'Add a closer strong enough to latch the leaf every time.',
    },
  ],
});

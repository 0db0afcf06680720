import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const manual = all(yes('fireRated'), yes('isPair'), is('inactiveBolts', 'manualFlush'));
/** Rooms where people are not normally; panic hardware and elevator rooms have their own rules. */
const seldomUsed = is('roomUse', 'storage', 'equipment', 'electricalRoom');

export const R45 = defineRule({
  id: 'R-45',
  title: 'No manual bolts on a rated pair',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4.5.1', 'Flush bolts of pairs'), under('boltLocks')],
  confidence: 'read',
  note: 'Which rooms count as not normally occupied is this schedule’s reading: storage, equipment and electrical rooms.',
  why: 'A leaf whose bolts someone forgot to throw is not latched, and the lock of the active leaf then holds nothing.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'inactiveBolts',
      severity: 'warn',
      when: all(manual, not(seldomUsed)),
      says: 'The inactive leaf of this fire-rated pair is held by manual bolts, which are not accepted here.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(manual, not(seldomUsed)),
      items: ['automaticFlushBolts'],
      says: 'Automatic or constant-latching bolts replace the manual ones.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(manual, seldomUsed),
      says: 'Labeled manual bolts may stay at this seldom-used room only if the authority accepts them.',
    },
  ],
});

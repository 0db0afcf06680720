import { text, under } from '../../codes/sections.ts';
import { all, any, is, nfpa101, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { nfpaAlone } from '../special/conditions.ts';

const oldClassroom = all(
  nfpaAlone,
  yes('isEgress'),
  is('roomUse', 'classroom'),
  is('workStatus', 'existing'),
);
const twoMotions = any(is('latch', 'boredPlusDeadbolt'), is('existingArrangement', 'deadboltPlusLatch'));
const accepted = all(any(nfpa101({ from: 2021, readTo: 2024 }), yes('tia1436Adopted')), no('panicPresent'));

export const R102 = defineRule({
  id: 'R-102',
  title: 'Two motions at an existing classroom door',
  family: 'rooms',
  book: 'nfpa101',
  cites: [under('educationalLockingNfpa'), text('nfpa101', '', 'TIA 1436 to the 2018 edition')],
  confidence: 'read',
  note: 'Speaks only where NFPA 101 is adopted without the IBC; under the IBC two motions are refused by R-08. That later editions carry the amendment was read second-hand.',
  why: 'One code lets an existing classroom keep its deadbolt as a second motion, under its own conditions only.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(oldClassroom, is('latch', 'boredPlusDeadbolt'), not(accepted)),
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'] },
      says: 'This device leaves the separate deadbolt in use, and the adopted text does not accept two motions at this classroom door.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(oldClassroom, twoMotions, not(accepted)),
      says: 'Remove the deadbolt, or install a lock that retracts latch and bolt with one turn of the lever.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(oldClassroom, twoMotions, accepted),
      items: ['ahjApproval'],
      says: 'The deadbolt may stay as a second motion, not at the same time as the first, if the authority agrees in writing.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(oldClassroom, twoMotions, accepted),
      says: 'A reviewer confirms that the classroom is existing, that the authority agreed and that no panic hardware is fitted.',
    },
  ],
});

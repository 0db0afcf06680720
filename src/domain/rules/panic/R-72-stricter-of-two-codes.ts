import { under } from '../../codes/sections.ts';
import { all, nfpa101, under as below } from '../../logic/condition.ts';
import { panicSpaces } from '../../logic/derived.ts';
import { defineRule } from '../rule.ts';

export const R72 = defineRule({
  id: 'R-72',
  title: 'Two codes, two panic hardware thresholds: the lower governs',
  family: 'panic',
  book: 'ibc',
  cites: [under('panicHardware'), under('panicHardwareNfpa')],
  confidence: 'secondary',
  why: 'Where two codes are adopted a door must satisfy each of them, so the lower load decides.',
  clauses: [
    {
      effect: 'caution',
      when: all(nfpa101(), panicSpaces.ibcAssemblyOrEducation, below('occupantLoad', 'panicLoadNfpa')),
      says: 'NFPA 101 alone would require panic hardware only from 100 people; the IBC requires it from 50, and this door serves {occupantLoad}.',
    },
  ],
});

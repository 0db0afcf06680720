import { under } from '../../codes/sections.ts';
import { all, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { approved30, signExcused, unsigned } from './conditions.ts';

export const R126 = defineRule({
  id: 'R-126',
  title: 'The sign at a delayed door',
  family: 'health',
  book: 'ibc',
  cites: [under('delayedEgress'), under('delayedEgressNfpa')],
  confidence: 'memory',
  note: 'Sign wording and place read; the exception and the PULL wording are from general knowledge. No such exception is known in NFPA 101, so it is not offered beside it.',
  why: 'A person pushing a door that does not open must be told that it will.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('wishNoDelaySign'), not(signExcused)),
      of: { release: ['delayed'] },
      says: 'A delayed door without its sign is not allowed here; drop the delay or accept the sign.',
    },
    {
      key: 'b',
      effect: 'require',
      when: unsigned,
      of: { release: ['delayed'] },
      items: ['ahjApproval'],
      says: 'In this treatment area the sign may be left out only with the authority’s approval in writing.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: unsigned,
      of: { release: ['delayed'] },
      says: 'A reviewer confirms that patients here need containment and that the authority agreed to leave the sign out.',
    },
    {
      key: 'd',
      effect: 'require',
      when: all(yes('isEgress'), yes('swingsWithEgress'), not(approved30), not(unsigned)),
      of: { release: ['delayed'] },
      items: ['signDelayed15'],
      says: 'The sign is on the leaf, above the bar and within 12 in of it, in letters 1 in high.',
    },
    {
      key: 'e',
      effect: 'require',
      when: all(yes('isEgress'), no('swingsWithEgress'), not(approved30), not(unsigned)),
      of: { release: ['delayed'] },
      items: ['signDelayedPull'],
      says: 'This leaf swings toward the person leaving, so its sign says PULL in place of PUSH.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), no('swingsWithEgress'), approved30, not(unsigned)),
      of: { release: ['delayed'] },
      items: ['signDelayedPull30'],
      says: 'This leaf swings toward the person leaving and 30 s are approved: its sign says PULL and names 30 seconds.',
    },
  ],
});

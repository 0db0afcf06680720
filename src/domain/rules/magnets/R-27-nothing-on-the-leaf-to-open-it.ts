import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R27 = defineRule({
  id: 'R-27',
  title: 'No strike or fail-secure bolt where nothing on the leaf opens it',
  family: 'magnets',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('freeEgressNfpa')],
  confidence: 'memory',
  note: 'The fail-safe strike is our addition: with power on it holds a push/pull leaf just as firmly.',
  why: 'A push plate retracts no latch, so the electric part alone decides whether people get out.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('latch', 'pushPull', 'roller')),
      of: { family: ['bolt', 'strike'], failMode: ['secure'] },
      says: 'The leaf has only push and pull, so without power this device locks people in.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('latch', 'pushPull', 'roller')),
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'The leaf has no lever or bar that retracts a latch from this strike, so people could leave only while power is off.',
    },
  ],
});

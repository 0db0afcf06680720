import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const leaf = { egressRole: 'exitAccess', latch: 'pushPull' } as const;
const around = (clause: string, on: string) => [
  ...onEach([on], 'roller latch', { ...leaf, latch: 'roller' }, 'yes' as const, clause),
  ...onEach([on], 'leaf with a lever', { ...leaf, latch: 'mortise' }, 'no' as const, clause),
  ...onEach([on], 'cabinet', { ...leaf, egressRole: 'noOccupiedSpace' }, 'no' as const, clause),
  ...onEach([on], 'latch not known', { egressRole: 'exitAccess' }, 'unknown' as const, clause),
];

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
  cases: cases(
    ...onEach(
      ['boltMotor/secure/sensor', 'strikeMortise/secure/free', 'strikeRim/secure/none'],
      'push/pull leaf',
      leaf,
      'yes',
      { clause: 'a', does: 'prohibit' },
    ),
    ...onEach(
      ['boltMotor/safe/sensor', 'strikeMortise/safe/free', 'mortiseLock/secure/free'],
      'not meant',
      leaf,
      'no',
      'a',
    ),
    ...around('a', 'boltMotor/secure/sensor'),
    ...onEach(['strikeMortise/safe/free', 'strikeRim/safe/none'], 'push/pull leaf', leaf, 'yes', {
      clause: 'b',
      does: 'prohibit',
    }),
    ...onEach(
      ['strikeMortise/secure/free', 'boltMotor/safe/sensor', 'magnet/safe/sensor'],
      'not meant',
      leaf,
      'no',
      'b',
    ),
    ...around('b', 'strikeMortise/safe/free'),
  ),
});

import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases } from '../rule.ts';

export const R79Cases = cases(
  ...doing(
    { a: 'caution', b: 'caution' },
    (
      [
        ['a', 'verticalRods', 'rimPlusRods'],
        ['b', 'rimPlusRods', 'verticalRods'],
      ] as const
    ).flatMap(([clause, latch, other]) => [
      ...onEach(
        ['strikeRim/secure/free', 'strikeMortise/safe/free'],
        latch,
        { latch },
        'yes' as const,
        clause,
      ),
      ...onEach(['strikeRim/secure/free'], 'rim device', { latch: 'rimExit' }, 'no' as const, clause),
      ...onEach(['strikeRim/secure/free'], other, { latch: other }, 'no' as const, clause),
      ...onEach(['strikeRim/secure/free'], 'latch not known', {}, 'unknown' as const, clause),
      ...onEach(
        ['exitTrim/secure/free', 'latchRetractionMotor/secure/free'],
        'no strike',
        { latch },
        'no' as const,
        clause,
      ),
    ]),
  ),
);

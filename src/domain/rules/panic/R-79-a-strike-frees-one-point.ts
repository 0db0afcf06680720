import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';

export const R79 = defineRule({
  id: 'R-79',
  title: 'A strike releases one point, vertical rods latch at two',
  family: 'panic',
  book: 'practice',
  cites: [under('panicHardware')],
  confidence: 'memory',
  why: 'The door stays latched although the strike has released, and the owner pays twice.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: is('latch', 'verticalRods'),
      of: { family: ['strike'] },
      says: 'Vertical rods latch at top and bottom, and a strike releases only one of them; use electric latch retraction or electrified trim.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('latch', 'rimPlusRods'),
      of: { family: ['strike'] },
      says: 'The strike releases the leaf with the rim device; the leaf with the rods stays latched from outside.',
    },
  ],
  cases: cases(
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
  ),
});

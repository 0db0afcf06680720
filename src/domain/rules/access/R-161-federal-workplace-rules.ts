import { text } from '../../codes/sections.ts';
import { all, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R161 = defineRule({
  id: 'R-161',
  title: 'Held exits in a workplace under federal rules',
  family: 'access',
  book: 'osha',
  cites: [
    text('osha', '1910.36(d)', 'Exit doors are not locked from inside'),
    text('osha', '1910.35', 'Other codes accepted'),
  ],
  confidence: 'secondary',
  why: 'The workplace rule has no provision for a delayed, staff-released or keyed exit; only another code met in full covers it.',
  clauses: [
    {
      effect: 'signOff',
      grade: 'should',
      when: all(yes('oshaWorkplace'), yes('isEgress')),
      of: { release: ['delayed', 'controlled', 'clinical', 'keyInside'] },
      says: 'Record that the exit routes meet NFPA 101-2009 or IFC-2009 in full; only on that ground does the federal workplace rule accept this exit.',
    },
  ],
});

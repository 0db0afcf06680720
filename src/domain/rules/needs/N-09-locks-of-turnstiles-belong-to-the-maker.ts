import { text } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const makersUnit = is('doorType', 'turnstile', 'turnstileFull', 'turnstileSecurity', 'revolving', 'folding');

export const N09 = defineRule({
  id: 'N-09',
  title: 'Locks of turnstiles, revolving and folding doors come from their manufacturer',
  family: 'needs',
  book: 'practice',
  cites: [text('practice', '', 'Drives and locks of turnstiles, revolving and folding doors')],
  confidence: 'practice',
  why: 'Drive, lock and release of such a unit are built and tested together; a bolt added later holds wings that have to turn.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: all(makersUnit, any(yes('wantsReader'), yes('wishScheduledUnlock'))),
      says: 'The manufacturer’s own package locks and releases this turnstile, revolving or folding door, so no lock in this schedule goes on it; order reader and schedule with that package, and have a reviewer confirm how it lets people out.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(makersUnit, no('wantsReader'), no('wishScheduledUnlock')),
      says: 'It stays as its manufacturer delivers it; if it is to be locked, the lock comes with that package.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, ibc, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R30 = defineRule({
  id: 'R-30',
  title: 'Special locks carry their listing',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('hardwareRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    text('ul', 'UL 294, UL 1034'),
  ],
  confidence: 'read',
  note: 'Free-exit locks need no such listing in these sections; some authorities ask for it on every wire.',
  why: 'The listing says that the lock was tested to let go when power or the release signal is lost.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['listedLock'],
      when: all(yes('isEgress'), not(ibc({ from: 2024, readTo: 2024 }))),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'lobby'] },
      says: 'The units of this locking system are listed to UL 294.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['listedLock'],
      when: all(yes('isEgress'), ibc({ from: 2024, readTo: 2024 })),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'lobby'] },
      says: 'The lock itself is listed to UL 294 or UL 1034.',
    },
  ],
});

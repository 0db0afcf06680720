import { under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R98 = defineRule({
  id: 'R-98',
  title: 'Server and data rooms open freely from inside',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'read',
  why: 'However valuable the equipment, a person inside must be able to get out at once.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('roomUse', 'serverRoom', 'modularDataCenter'),
      of: { release: ['free'] },
      says: 'A fail-secure lock with a lever or bar that always opens from inside is allowed and is the usual choice here.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('roomUse', 'serverRoom', 'modularDataCenter'), is('readerSides', 'both')),
      says: 'The inside reader may only record who leaves; the lever opens without it.',
    },
  ],
});

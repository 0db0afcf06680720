import { text, under } from '../../codes/sections.ts';
import { all, any, is, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R143 = defineRule({
  id: 'R-143',
  title: 'Doors in series',
  family: 'doors',
  book: 'ibc',
  cites: [under('doorsInSeries'), text('ada', '404.2.6', 'Doors in series')],
  confidence: 'memory',
  why: 'A person in a wheelchair or in a crowd must not be caught between two doors.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(yes('doorsInSeries'), below('seriesSpacingIn', 'seriesFreeLengthIn')),
      says: 'There is only {seriesSpacingIn} between the two doors; 48 in is needed beyond the leaf that swings in.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('doorsInSeries'), any(yes('wishInterlock'), is('readerSides', 'both'))),
      says: 'Judge each door of the vestibule separately; anyone between them must always be able to get out one way.',
    },
  ],
});

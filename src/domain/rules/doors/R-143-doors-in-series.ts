import { text, under } from '../../codes/sections.ts';
import { all, any, is, under as below, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    [
      'just under 48 in between',
      { doorsInSeries: true, seriesSpacingIn: 47.9375 },
      'yes',
      { clause: 'a', does: 'caution' },
    ],
    ['48 in between', { doorsInSeries: true, seriesSpacingIn: 48 }, 'no', { clause: 'a' }],
    ['no second door', { doorsInSeries: false, seriesSpacingIn: 10 }, 'no', { clause: 'a' }],
    ['not measured', { doorsInSeries: true }, 'unknown', { clause: 'a' }],
    [
      'interlock',
      { doorsInSeries: true, wishInterlock: true, readerSides: 'secure' },
      'yes',
      { clause: 'b', does: 'caution' },
    ],
    [
      'readers on both sides',
      { doorsInSeries: true, wishInterlock: false, readerSides: 'both' },
      'yes',
      { clause: 'b' },
    ],
    [
      'one reader, no interlock',
      { doorsInSeries: true, wishInterlock: false, readerSides: 'secure' },
      'no',
      { clause: 'b' },
    ],
    [
      'no second door',
      { doorsInSeries: false, wishInterlock: true, readerSides: 'both' },
      'no',
      { clause: 'b' },
    ],
    ['wishes not known', { doorsInSeries: true }, 'unknown', { clause: 'b' }],
  ),
});

import { text, under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B29 = defineRule({
  id: 'B-29',
  title: 'A push bar on something that has no leaf to push',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('panicHardware')],
  confidence: 'project',
  why: 'Panic hardware works on a leaf that swings.',
  clauses: [
    {
      effect: 'finding',
      field: 'panicPresent',
      severity: 'refuse',
      when: all(
        is(
          'doorType',
          'overhead',
          'grille',
          'revolving',
          'turnstile',
          'turnstileFull',
          'turnstileSecurity',
          'gateSlide',
          'slidingManual',
          'slidingAutomatic',
          'folding',
        ),
        yes('panicPresent'),
      ),
      says: 'A push bar is entered on a door of this type, {doorType}, which does not swing; check the type, or whether the bar is on a door beside it.',
    },
  ],
});

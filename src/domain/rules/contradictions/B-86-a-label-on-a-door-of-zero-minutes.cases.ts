import { type CaseRow, cases } from '../rule.ts';

export const B86Cases = cases(
  ...(['a', 'b'] as const).flatMap((clause): readonly CaseRow[] => [
    ...(['seen', 'illegible', 'removed'] as const).map(
      (fireLabel): CaseRow => [
        `0 min, label ${fireLabel}`,
        { fireRatingMin: 0, fireLabel },
        'yes',
        { clause, does: clause === 'a' ? 'warn fireRatingMin' : 'signOff must' },
      ],
    ),
    ['0 min, no label', { fireRatingMin: 0, fireLabel: 'none' }, 'no', { clause }],
    ['20 min, label seen', { fireRatingMin: 20, fireLabel: 'seen' }, 'no', { clause }],
    ['one minute, label seen', { fireRatingMin: 1, fireLabel: 'seen' }, 'no', { clause }],
    ['0 min, label not asked', { fireRatingMin: 0 }, 'no', { clause }],
    ['rating not known', { fireLabel: 'seen' }, 'unknown', { clause }],
  ]),
);

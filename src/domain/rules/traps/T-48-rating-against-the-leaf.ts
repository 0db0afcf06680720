import { text } from '../../codes/sections.ts';
import { all, any, atLeast, atMost, is, not, over } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

/** Minutes found on ordinary labels; anything else is asked about, never rounded. */
const usualLabel = any(
  all(atLeast('fireRatingMin', 20), atMost('fireRatingMin', 20)),
  all(atLeast('fireRatingMin', 45), atMost('fireRatingMin', 45)),
  all(atLeast('fireRatingMin', 60), atMost('fireRatingMin', 60)),
  all(atLeast('fireRatingMin', 90), atMost('fireRatingMin', 90)),
  all(atLeast('fireRatingMin', 180), atMost('fireRatingMin', 180)),
);

export const T48 = defineRule({
  id: 'T-48',
  title: 'A rating that the leaf cannot carry',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '', 'Fire labels by leaf'), text('project', '')],
  confidence: 'practice',
  why: 'Some leaves carry no fire label at all, and odd minutes are a slip more often than a label.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: all(
        over('fireRatingMin', 0),
        is(
          'leafMaterial',
          'woodHollowCore',
          'aluminiumNarrow',
          'aluminiumMedium',
          'aluminiumWide',
          'glassFrameless',
          'chainLink',
        ),
      ),
      says: '{fireRatingMin} is written against a leaf that ordinarily carries no fire label: ask for the label or the listing.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: all(over('fireRatingMin', 0), not(usualLabel)),
      says: '{fireRatingMin} is not an ordinary label (20, 45, 60, 90, 180): read the label again; it is not rounded.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: any(
        all(is('leafMaterial', 'woodSolidCore'), over('fireRatingMin', 20)),
        all(is('leafMaterial', 'woodMineralCore'), over('fireRatingMin', 90)),
      ),
      says: '{fireRatingMin} is above the labels usual for this leaf (plain solid core 20, mineral core 90): ask for the label.',
    },
  ],
  cases: cases(
    [
      'rating on woodHollowCore',
      { fireRatingMin: 20, leafMaterial: 'woodHollowCore' },
      'yes',
      { clause: 'a' },
    ],
    [
      'rating on aluminiumNarrow',
      { fireRatingMin: 20, leafMaterial: 'aluminiumNarrow' },
      'yes',
      { clause: 'a' },
    ],
    [
      'rating on aluminiumMedium',
      { fireRatingMin: 20, leafMaterial: 'aluminiumMedium' },
      'yes',
      { clause: 'a' },
    ],
    ['rating on aluminiumWide', { fireRatingMin: 20, leafMaterial: 'aluminiumWide' }, 'yes', { clause: 'a' }],
    [
      'rating on glassFrameless',
      { fireRatingMin: 20, leafMaterial: 'glassFrameless' },
      'yes',
      { clause: 'a' },
    ],
    ['rating on chainLink', { fireRatingMin: 20, leafMaterial: 'chainLink' }, 'yes', { clause: 'a' }],

    ['one minute is a rating', { fireRatingMin: 1, leafMaterial: 'glassFrameless' }, 'yes', { clause: 'a' }],
    ['no rating on glass', { fireRatingMin: 0, leafMaterial: 'glassFrameless' }, 'no', { clause: 'a' }],
    ['steel carries labels', { fireRatingMin: 90, leafMaterial: 'hollowMetal' }, 'no', { clause: 'a' }],
    ['leaf not surveyed', { fireRatingMin: 90 }, 'unknown', { clause: 'a' }],
    ...([20, 45, 60, 90, 180] as const).flatMap((minutes) => [
      [`${minutes} min`, { fireRatingMin: minutes }, 'no', { clause: 'b' }] as const,
      [`one less than ${minutes} min`, { fireRatingMin: minutes - 1 }, 'yes', { clause: 'b' }] as const,
      [`one more than ${minutes} min`, { fireRatingMin: minutes + 1 }, 'yes', { clause: 'b' }] as const,
    ]),
    ['75 min', { fireRatingMin: 75 }, 'yes', { clause: 'b' }],
    ['one minute is asked about', { fireRatingMin: 1 }, 'yes', { clause: 'b' }],
    ['not rated', { fireRatingMin: 0 }, 'no', { clause: 'b' }],
    ['rating not known', {}, 'unknown', { clause: 'b' }],
    ['plain solid core at 45', { leafMaterial: 'woodSolidCore', fireRatingMin: 45 }, 'yes', { clause: 'c' }],
    [
      'plain solid core just over 20',
      { leafMaterial: 'woodSolidCore', fireRatingMin: 21 },
      'yes',
      { clause: 'c' },
    ],
    ['plain solid core at 20', { leafMaterial: 'woodSolidCore', fireRatingMin: 20 }, 'no', { clause: 'c' }],
    [
      'mineral core just over 90',
      { leafMaterial: 'woodMineralCore', fireRatingMin: 91 },
      'yes',
      { clause: 'c' },
    ],
    ['mineral core at 90', { leafMaterial: 'woodMineralCore', fireRatingMin: 90 }, 'no', { clause: 'c' }],
    ['steel at 180', { leafMaterial: 'hollowMetal', fireRatingMin: 180 }, 'no', { clause: 'c' }],
    ['solid core, rating not known', { leafMaterial: 'woodSolidCore' }, 'unknown', { clause: 'c' }],
  ),
});

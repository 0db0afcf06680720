import type { FactValues } from '../../model/fields.ts';

/** Door facts that most cases of this family start from. */
export const rated: FactValues = { fireRatingMin: 90 };
export const unrated: FactValues = { fireRatingMin: 0, wallRatingMin: 0 };

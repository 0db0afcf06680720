import { all, is, yes } from '../../logic/condition.ts';
import type { FactValues } from '../../model/fields.ts';

/** Door facts that most cases of this family start from. */
export const rated: FactValues = { fireRatingMin: 90 };
export const unrated: FactValues = { fireRatingMin: 0, wallRatingMin: 0 };

/** A fire door that needs a closer and has none. */
export const nothingCloses = all(yes('fireRated'), is('closing', 'none'));

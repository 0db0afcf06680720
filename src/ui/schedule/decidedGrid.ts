import { later } from '../frame/later.ts';

/** The rules and all that is worked out from them come after the first sight of the schedule. */
export const decidedGrid = later(() => import('./DecidedGrid.tsx'));

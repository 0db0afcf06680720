import { decide } from '../domain/decide/decide.ts';
import { rememberByIdentity, rememberForAll } from './derive.ts';

/**
 * One opening decided by itself, again only when it or what it rests on changed. No screen may read this: what the
 * building check leaves of it is what counts (buildings.ts, buildingCheck.ts), and lint holds them to it.
 */
export const decisionAlone = rememberByIdentity(decide);

/** All of them by opening id; one edit costs one new decision. */
export const allAlone = rememberForAll(decisionAlone);

import { decide } from '../domain/decide/decide.ts';
import { reportOf } from '../domain/decide/report.ts';
import { rememberByIdentity, rememberForAll } from './derive.ts';

/** The decision on one opening, computed again only when it or what it rests on changed. */
export const decisionFor = rememberByIdentity(decide);

/** All decisions by opening id; one edit costs one new decision. */
export const allDecisions = rememberForAll(decisionFor);

/** The decision in words. */
export const reportFor = rememberByIdentity((project, opening) => reportOf(decisionFor(project, opening)));

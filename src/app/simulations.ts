import { simulateOpening } from '../domain/decide/whatHappens.ts';
import { decisionFor } from './decisions.ts';
import { rememberByIdentity } from './derive.ts';

/** One opening in every condition, computed again only when it or what it rests on changed. */
export const simulationFor = rememberByIdentity((project, opening) =>
  simulateOpening(project, opening, decisionFor(project, opening)),
);

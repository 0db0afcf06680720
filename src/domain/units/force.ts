import type { Qty } from './quantity.ts';

/** Newtons per pound-force, exact by definition of the pound and of standard gravity (ISO 80000-4). */
const newtonsPerLbf = 4.4482216152605;
/** Joules per foot-pound, 0.3048 m × the above, exact. */
const joulesPerFtLbf = 0.3048 * newtonsPerLbf;

/** Static force in newtons. */
export function newtons(force: Qty<'lbf'>): number {
  return force * newtonsPerLbf;
}
/** Energy of a blow in joules; it is never converted into a static force. */
export function joules(energy: Qty<'ft·lbf'>): number {
  return energy * joulesPerFtLbf;
}

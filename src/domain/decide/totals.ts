import { type Candidate, candidates } from '../devices/candidates.ts';
import { type Cell, type FitRow, fitCell } from '../fit/matrix.ts';
import type { Weights } from '../model/project.ts';
import { scoreAll, type ScoreFacts } from './score.ts';

/**
 * Totals of all candidates, remembered: the doors of a building repeat themselves, and the ranking looks at few of
 * their facts. The type asks for every one of them, so that none can be forgotten in the key.
 */
const inKey: Readonly<Record<keyof ScoreFacts, true>> = {
  securityNeed: true,
  traffic: true,
  appearance: true,
  wishedRelease: true,
  latch: true,
  leafMaterial: true,
  frameMaterial: true,
  frameGrouted: true,
  latchProjectionIn: true,
};
const keyParts = Object.keys(inKey) as readonly (keyof ScoreFacts)[];

const remembered = new WeakMap<Weights, Map<string, Int32Array>>();
/** About a megabyte; then it starts afresh. */
const mostRemembered = 2000;

/** By candidate index, in tenths of a point. Shared: whoever gets it must not write into it. */
export function totalsFor(facts: ScoreFacts, row: FitRow | undefined, weights: Weights): Int32Array {
  let byKey = remembered.get(weights);
  if (!byKey) {
    byKey = new Map();
    remembered.set(weights, byKey);
  }
  let key = row === undefined ? '' : String(row.row);
  for (let part = 0; part < keyParts.length; part++) key += `|${facts[keyParts[part] as keyof ScoreFacts]}`;
  let totals = byKey.get(key);
  if (!totals) {
    if (byKey.size >= mostRemembered) byKey.clear();
    totals = new Int32Array(candidates.length);
    const cellOf = (candidate: Candidate): Cell | undefined => row && fitCell(row, candidate.deviceId);
    scoreAll(facts, cellOf, weights, totals);
    byKey.set(key, totals);
  }
  return totals;
}

import { nearTieTenths } from '../decide/score.ts';
import { type ScorePart, scoreParts, type Weights } from '../model/project.ts';

export const scorePartMeans: Record<ScorePart, string> = {
  security: 'How well the weakest of device, latch, leaf and frame resists what the opening must resist.',
  simplicity: 'How few special arrangements stand between a person and the exit.',
  effort: 'How few hours of work the opening needs before the device is installed.',
  cost: 'How little the device costs, installed, against the others.',
  durability: 'Whether it is graded for the traffic of the opening.',
  appearance: 'How little of it shows, where looks matter.',
  power: 'How little current it draws, and whether all day.',
};

/** Whole percents; nothing counts where all weights are zero. */
export function weightShares(weights: Weights): Record<ScorePart, number> {
  const total = scoreParts.reduce((sum, part) => sum + weights[part], 0);
  return Object.fromEntries(
    scoreParts.map((part) => [part, total === 0 ? 0 : Math.round((weights[part] / total) * 100)]),
  ) as Record<ScorePart, number>;
}

export const nearTieMeans = `Two arrangements that come within ${nearTieTenths / 10} points of 100 of each other are called a near-tie; either may be chosen for other reasons. Weights rank what the rules leave; they never bring back what a rule forbids.`;

export const allZeroMeans = 'With every weight at zero nothing is ranked: everything the rules leave ties.';

/** A weight as typed: a number from 0 to 100. */
export function readWeight(text: string): { ok: true; value: number } | { ok: false; says: string } {
  const value = Number(text.trim());
  if (text.trim() === '' || !Number.isFinite(value)) return { ok: false, says: 'A weight is a number.' };
  if (value < 0 || value > 100) return { ok: false, says: 'A weight is between 0 and 100.' };
  return { ok: true, value };
}

import { counted } from '../text/counted.ts';
import type { DecisionReport } from './report.ts';

/** In place of the runner-up. */
export const nothingElse = 'Nothing else is left to compare it with.';

function runnerUpInWords({ why, doubt, signOffs }: NonNullable<DecisionReport['runnerUp']>): string {
  const signed =
    signOffs.length === 0 ? '' : `It would have to be signed for (${counted(signOffs.length, 'reason')}).`;
  return [why, doubt, signed].filter((one) => one !== '').join(' ');
}

/** Why this one, in a paragraph: its points, what came second, and what the owner prefers. Empty where nothing is chosen. */
export function whyInWords(report: DecisionReport): string {
  if (report.points === '') return '';
  const rest = report.runnerUp ? runnerUpInWords(report.runnerUp) : nothingElse;
  return [`${report.points} points of 100.`, rest, ...report.preference].join(' ');
}

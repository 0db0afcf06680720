import type { Choice, Decision } from '../decide/decision.ts';
import type { ScorePart } from '../model/project.ts';
import { midSentence } from '../text/midSentence.ts';
import { candidateInWords } from './arrangement.ts';

export const scorePartWords: Record<ScorePart, string> = {
  security: 'Security against need',
  simplicity: 'Simple egress',
  effort: 'Installed effort',
  cost: 'Cost',
  durability: 'Durability for the traffic',
  appearance: 'Appearance',
  power: 'Power',
};

export function pointsInWords(tenths: number): string {
  return (tenths / 10).toFixed(1);
}

/** Why the runner-up came second: the parts in which it fell behind, the largest first. */
export function whyItLost(decision: Decision): string {
  const { chosen, runnerUp } = decision;
  if (!chosen || !runnerUp) return '';
  const gap = chosen.score.tenths - runnerUp.score.tenths;
  const behind = partsBehind(chosen, runnerUp);
  const name = candidateInWords(runnerUp.candidate);
  if (gap < 0) return `${name} scores ${pointsInWords(-gap)} points more than what was chosen.`;
  const reasons = [...behind, ...preferenceBehind(chosen, runnerUp)]
    .toSorted((a, b) => b.tenths - a.tenths)
    .slice(0, 3)
    .map(
      ({ part, tenths }) =>
        `${midSentence(part === null ? preferenceWord : scorePartWords[part])} −${pointsInWords(tenths)}`,
    );
  const why = reasons.length > 0 ? `: ${reasons.join(', ')}` : '';
  const tie = decision.nearTie ? ' This is a near-tie; either may be chosen for other reasons.' : '';
  return `${name} comes ${pointsInWords(gap)} points behind${why}.${tie}`;
}

export const preferenceWord = 'Owner’s preference';

/** The owner prefers what was chosen more than the runner-up. */
function preferenceBehind(chosen: Choice, other: Choice): readonly { part: null; tenths: number }[] {
  const tenths = (chosen.score.preference?.tenths ?? 0) - (other.score.preference?.tenths ?? 0);
  return tenths > 0 ? [{ part: null, tenths }] : [];
}

/** What the owner prefers at this opening, with the reason and where it comes from, and whether it decided. */
export function preferenceInWords({
  chosen,
  runnerUp,
}: Pick<Decision, 'chosen' | 'runnerUp'>): readonly string[] {
  const told = [chosen, runnerUp].flatMap((choice): string[] => {
    const preference = choice?.score.preference;
    if (!choice || !preference) return [];
    const { says, standard } = preference.because;
    const from = standard === undefined ? '' : ` (${standard})`;
    return [
      `${choice.candidate.device.name} is preferred by the owner${from}, ${pointsInWords(preference.tenths)} points: ${says}`,
    ];
  });
  if (told.length === 0 || !chosen || !runnerUp) return told;
  const bare = ({ score }: Choice) => score.tenths - (score.preference?.tenths ?? 0);
  const decided = chosen.score.tenths >= runnerUp.score.tenths && bare(chosen) < bare(runnerUp);
  return decided
    ? [...told, `Without preferences ${candidateInWords(runnerUp.candidate)} would rank before it.`]
    : told;
}

function partsBehind(chosen: Choice, other: Choice): { part: ScorePart; tenths: number }[] {
  return chosen.score.parts
    .map((one, index) => ({ part: one.part, tenths: one.tenths - (other.score.parts[index]?.tenths ?? 0) }))
    .filter(({ tenths }) => tenths > 0)
    .toSorted((a, b) => b.tenths - a.tenths);
}

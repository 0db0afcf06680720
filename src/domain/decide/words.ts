import { type CodeBasis } from '../codes/basis.ts';
import { citeInWords } from '../codes/sections.ts';
import { releases, type Candidate } from '../devices/candidates.ts';
import type { FailMode } from '../devices/devices.ts';
import { fillSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import type { ScorePart } from '../model/project.ts';
import { confidenceInWords, type Grade, type Rule } from '../rules/rule.ts';
import { isForbiddenByHand } from './byHand.ts';
import type { Choice, Decision, DecisionState } from './decision.ts';
import type { Step } from './ruleBook.ts';

/** Everything a decision says to a person. Components print these words; they never put sentences together. */

export const failModeWords: Record<FailMode, string> = {
  safe: 'Fail safe',
  secure: 'Fail secure',
  asIs: 'Stays as it is',
  none: 'No power',
};

export const stateWords: Record<DecisionState, { word: string; means: string }> = {
  settled: {
    word: 'Settled',
    means:
      'No missing information can change the arrangement, the signatures or the required items. This is not a code review.',
  },
  open: {
    word: 'Provisional',
    means:
      'Something not yet known could still change the arrangement, what is signed for or what is required.',
  },
  severe: {
    word: 'Severe finding',
    means:
      'As it stands, someone is locked in or a fire door fails, here or in the building around it. Not settled until that is fixed.',
  },
  refused: {
    word: 'Refused',
    means: 'The survey contradicts itself on a life-safety point; correct it first.',
  },
  referred: { word: 'To a reviewer', means: 'Not decided here; a reviewer decides this opening.' },
  left: {
    word: 'Left as it is',
    means: 'Nothing is wanted here and nothing is bought. What lets people out is still asked and reported.',
  },
  none: {
    word: 'No workable hardware',
    means: 'The rules leave no arrangement for this opening as it stands.',
  },
};

/** While the building is walked again after an edit: by itself the opening is settled, and nobody is told so yet. */
export type ShownState = DecisionState | 'checking' | 'forbidden';
export const shownStateWords: Record<ShownState, { word: string; means: string }> = {
  ...stateWords,
  forbidden: {
    word: 'Refused by rule, chosen by a person',
    means:
      'A rule forbids what a person chose here. It must be signed for, it never counts as settled or ordered, and no acceptance test is written for it.',
  },
  checking: {
    word: 'Checking the building',
    means:
      'Decided with the last answer. The building is being checked with it; until then nothing is settled.',
  },
};

export function shownState(
  decision: Pick<Decision, 'state' | 'overridden' | 'rejected'>,
  checking = false,
): ShownState {
  const { state } = decision;
  if (state === 'open' && isForbiddenByHand(decision)) return 'forbidden';
  return checking && state === 'settled' ? 'checking' : state;
}

/** As paper and tables say it; what is being checked is not printed. */
export const stateInWords = (decision: Pick<Decision, 'state' | 'overridden' | 'rejected'>) =>
  shownStateWords[shownState(decision)];

/** The head over what hangs on facts nobody knows. */
export const maybeNeeded = 'Needed, or ruled out by a fact not known yet';

/** In place of a recommendation, while nobody has said what door it is. */
export const nothingNamedYet = 'Nothing is recommended before door type, leaf and latch are known.';

export const gradeWords: Record<Grade, string> = {
  must: 'Must be signed before issue',
  should: 'Should be looked at',
  note: 'Note',
};

export const scorePartWords: Record<ScorePart, string> = {
  security: 'Security against need',
  simplicity: 'Simple egress',
  effort: 'Installed effort',
  cost: 'Cost',
  durability: 'Durability for the traffic',
  appearance: 'Appearance',
  power: 'Power',
};

export function candidateInWords(candidate: Candidate): string {
  const mode =
    candidate.failMode === 'safe' || candidate.failMode === 'secure'
      ? `, ${midSentence(failModeWords[candidate.failMode])}`
      : '';
  return `${candidate.device.name}${mode}`;
}

export function releaseInWords(candidate: Candidate): string {
  return releases[candidate.release];
}

export interface StepWords {
  readonly ruleId: string;
  readonly sentence: string;
  readonly cites: readonly string[];
  readonly confidence: string;
  /** The rule was not read in the code's own text. */
  readonly secondHand: boolean;
  readonly note: string | undefined;
}

export function stepInWords(step: Step, decision: Pick<Decision, 'slots' | 'basis'>): StepWords {
  return {
    ruleId: step.rule.id,
    // What is not sure is named by its title: its sentence would speak of facts nobody knows.
    sentence: step.sure
      ? fillSentence(step.clause.says, decision.slots)
      : `${step.rule.title}: not known yet whether it applies.`,
    cites: citesInWords(step, decision.basis),
    confidence: confidenceInWords(step.rule.confidence),
    secondHand: isSecondHand(step),
    note: step.rule.note,
  };
}

/** Clauses of one rule that are in doubt all read alike; a reader wants the sentence once. */
export function stepsInWords(
  steps: readonly Step[],
  decision: Pick<Decision, 'slots' | 'basis'>,
): readonly StepWords[] {
  const once = new Map<string, StepWords>();
  for (const step of steps) {
    const words = stepInWords(step, decision);
    const said = `${words.sentence} ${words.ruleId}`;
    if (!once.has(said)) once.set(said, words);
  }
  return [...once.values()];
}

export function isSecondHand(step: Step): boolean {
  return (
    step.rule.confidence === 'secondary' ||
    step.rule.confidence === 'memory' ||
    step.rule.confidence === 'inferred'
  );
}

const citesByBasis = new WeakMap<CodeBasis, Map<Rule, readonly string[]>>();

/** The same for every opening of a project, so it is put into words once. */
export function citesInWords(step: Pick<Step, 'rule'>, basis: CodeBasis): readonly string[] {
  let byRule = citesByBasis.get(basis);
  if (!byRule) {
    byRule = new Map();
    citesByBasis.set(basis, byRule);
  }
  let cites = byRule.get(step.rule);
  if (!cites) {
    cites = step.rule.cites.map((cite) => citeInWords(cite, basis));
    byRule.set(step.rule, cites);
  }
  return cites;
}

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

import type { Decision } from '../decide/decision.ts';
import { factsIn, type Step } from '../decide/ruleBook.ts';
import type { Candidate } from '../devices/candidates.ts';
import { type DeviceId, devices } from '../devices/devices.ts';
import { missingFacts } from '../logic/missing.ts';
import { slotOf } from '../logic/slots.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { standingCaution } from '../text/cautions.ts';
import { valueInWords } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { arrangementInWords, candidateInWords, failModeWords, releaseInWords } from './arrangement.ts';
import { type Maybe, maybesOf } from './maybe.ts';
import { pointsInWords, preferenceInWords, preferenceWord, scorePartWords, whyItLost } from './ranking.ts';
import { type SignOffReason, signOffReasons } from './signOff.ts';
import { nothingNamedYet, stateInWords, stateWords } from './states.ts';
import { type StepWords, stepInWords, stepsInWords } from './steps.ts';
import { strengthOf, type StrengthWords } from './strength.ts';
import { type ItemLine, itemLines, type TradeWork, workByTrade } from './work.ts';

/** A decision in words, ready to be laid out on a screen, a sheet or a line of output. */
export interface DecisionReport {
  readonly state: { readonly word: string; readonly means: string };
  readonly headline: string;
  readonly failMode: string;
  readonly release: string;
  readonly points: string;
  readonly findings: readonly FindingWords[];
  readonly signOffs: readonly SignOffReason[];
  readonly work: readonly TradeWork[];
  readonly items: readonly ItemLine[];
  /** Needed, or ruled out by facts nobody knows yet. */
  readonly maybes: readonly Maybe[];
  readonly cautions: readonly StepWords[];
  readonly permits: readonly StepWords[];
  readonly runnerUp: RunnerUp | null;
  readonly score: readonly ScoreLine[];
  /** What the owner prefers here and why, one sentence each. */
  readonly preference: readonly string[];
  readonly strength: StrengthWords | null;
  readonly rejected: readonly RejectedDevice[];
  readonly open: readonly OpenWords[];
  readonly facts: readonly FactLine[];
  readonly caution: string;
}

/** The next best, with what would come with it: nobody takes it for the simpler way without having read that. */
export interface RunnerUp {
  readonly name: string;
  readonly why: string;
  /** What it waits for; empty when nothing unknown forbids it. */
  readonly doubt: string;
  /** What would have to be signed for. */
  readonly signOffs: readonly string[];
  readonly cautions: readonly string[];
}

export interface FindingWords extends StepWords {
  readonly field: FactKey;
  readonly fieldLabel: string;
  readonly refuses: boolean;
}
export interface ScoreLine {
  readonly part: string;
  /** 0 to 100. */
  readonly value: number;
  readonly weight: number;
  readonly points: string;
  readonly runnerUpPoints: string;
}
export interface RejectedDevice {
  readonly deviceId: DeviceId;
  readonly name: string;
  readonly variants: readonly {
    readonly id: string;
    readonly name: string;
    readonly because: readonly StepWords[];
  }[];
}
export interface OpenWords {
  readonly id: string;
  readonly name: string;
  readonly because: readonly StepWords[];
  readonly missing: readonly string[];
}
export interface FactLine {
  readonly key: FactKey;
  readonly label: string;
  readonly value: string;
  /** "known", or "assumed: …". */
  readonly standing: string;
}

export function reportOf(decision: Decision): DecisionReport {
  const { chosen } = decision;
  const words = (step: Parameters<typeof stepInWords>[0]) => stepInWords(step, decision);
  const missingOf = (condition: Parameters<typeof missingFacts>[0]) =>
    [...missingFacts(condition, decision.basis, decision.slots)].map((key) => fieldInfo(key).label);
  return {
    state: stateInWords(decision),
    headline: headlineOf(decision),
    failMode: chosen ? failModeWords[chosen.candidate.failMode] : '',
    release: chosen ? releaseInWords(chosen.candidate) : '',
    points: chosen ? pointsInWords(chosen.score.tenths) : '',
    findings: decision.findings.map((step) => ({ ...words(step), ...findingField(step.clause) })),
    signOffs: signOffReasons(decision),
    work: workByTrade(decision),
    items: itemLines(decision),
    maybes: maybesOf(decision),
    cautions: stepsInWords(decision.cautions, decision),
    permits: stepsInWords(decision.permits, decision),
    runnerUp: runnerUpOf(decision),
    score: scoreLines(decision),
    preference: preferenceInWords(decision),
    strength: strengthOf(decision),
    rejected: rejectedByDevice(decision),
    open: decision.open.map((one) => ({
      id: one.candidate.id,
      name: arrangementInWords(one.candidate),
      because: stepsInWords(one.because, decision),
      missing: [...new Set(one.because.flatMap((step) => missingOf(step.clause.when)))],
    })),
    facts: factLines(decision),
    caution: standingCaution,
  };
}

function headlineOf({ chosen, state }: Decision): string {
  if (chosen) return candidateInWords(chosen.candidate);
  return state === 'open' ? nothingNamedYet : stateWords[state].means;
}

function runnerUpOf(decision: Decision): RunnerUp | null {
  const { runnerUp, aboutRunnerUp, open } = decision;
  if (!runnerUp || !aboutRunnerUp) return null;
  const { candidate } = runnerUp;
  const because = open.find((one) => one.candidate === candidate)?.because;
  const facts = new Set<FactKey>();
  for (const step of because ?? []) missingFacts(step.clause.when, decision.basis, decision.slots, facts);
  const waits = [...facts].map((key) => midSentence(fieldInfo(key).label)).join(', ');
  const said = (steps: readonly Step[]) =>
    stepsInWords(steps, decision).map(({ sentence, ruleId }) => `${sentence} ${ruleId}`);
  return {
    name: arrangementInWords(candidate),
    why: whyItLost(decision),
    doubt: because ? `In doubt: it waits for ${waits === '' ? 'a person’s answer' : waits}.` : '',
    signOffs: said(aboutRunnerUp.signOffs.filter(isWeighty)),
    cautions: said(aboutRunnerUp.cautions),
  };
}

function isWeighty({ clause }: Step): boolean {
  return clause.effect === 'signOff' && clause.grade !== 'note';
}

function findingField(clause: Decision['findings'][number]['clause']) {
  if (clause.effect !== 'finding') throw new Error('A finding step carries a finding clause.');
  return {
    field: clause.field,
    fieldLabel: fieldInfo(clause.field).label,
    refuses: clause.severity === 'refuse',
  };
}

function scoreLines(decision: Decision): readonly ScoreLine[] {
  const { chosen, runnerUp } = decision;
  const parts = (chosen?.score.parts ?? []).map((one, index) => {
    const other = runnerUp?.score.parts[index];
    return {
      part: scorePartWords[one.part],
      value: Math.round(one.value),
      weight: one.weight,
      points: pointsInWords(one.tenths),
      runnerUpPoints: other ? pointsInWords(other.tenths) : '',
    };
  });
  const [own, others] = [chosen?.score.preference, runnerUp?.score.preference];
  if (!own && !others) return parts;
  return [
    ...parts,
    {
      part: preferenceWord,
      value: own ? 100 : 0,
      weight: (own ?? others)?.because.points ?? 0,
      points: pointsInWords(own?.tenths ?? 0),
      runnerUpPoints: runnerUp ? pointsInWords(others?.tenths ?? 0) : '',
    },
  ];
}

function rejectedByDevice(decision: Decision): readonly RejectedDevice[] {
  const byDevice = new Map<DeviceId, { id: string; name: string; because: readonly StepWords[] }[]>();
  for (const { candidate, because } of decision.rejected) {
    const list = byDevice.get(candidate.deviceId) ?? [];
    byDevice.set(candidate.deviceId, list);
    list.push({
      id: candidate.id,
      name: variantName(candidate),
      because: stepsInWords(because, decision),
    });
  }
  return [...byDevice].map(([deviceId, variants]) => ({ deviceId, name: devices[deviceId].name, variants }));
}

function variantName(candidate: Candidate): string {
  return `${failModeWords[candidate.failMode]} · ${releaseInWords(candidate)}`;
}

function factLines(decision: Decision): readonly FactLine[] {
  return factsIn(decision.relied).flatMap((key) => {
    const value = decision.slots[slotOf(key)];
    if (value === undefined) return [];
    const from = decision.assumed.get(key);
    return [
      {
        key,
        label: fieldInfo(key).label,
        value: valueInWords(key, value),
        standing: from === undefined ? 'known' : `assumed: ${from}`,
      },
    ];
  });
}

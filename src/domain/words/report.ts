import { standingCaution } from '../text/cautions.ts';
import { fillSentence, valueInWords } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { fitNotes } from '../fit/notes.ts';
import { memberNames, strengthMembers } from '../fit/strength.ts';
import { devices, type DeviceId } from '../devices/devices.ts';
import { type ItemId, itemOf, items, type Trade, trades } from '../devices/items.ts';
import { slotOf } from '../logic/slots.ts';
import { knownValues } from '../decide/factView.ts';
import { missingFacts } from '../logic/missing.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Candidate } from '../devices/candidates.ts';
import type { Decision } from '../decide/decision.ts';
import { type Counting, countingOf, countingShort } from '../hardware/counting.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { type Maybe, maybesOf } from './maybe.ts';
import { partsOf } from '../hardware/parts.ts';
import { factsIn, type Step } from '../decide/ruleBook.ts';
import { workNotes } from '../hardware/workNotes.ts';
import { type SignOffReason, signOffReasons } from './signOff.ts';
import { pointsInWords, scorePartWords, preferenceInWords, preferenceWord, whyItLost } from './ranking.ts';
import { type StepWords, stepInWords, stepsInWords } from './steps.ts';
import { arrangementInWords, candidateInWords, failModeWords, releaseInWords } from './arrangement.ts';
import { nothingNamedYet, stateInWords, stateWords } from './states.ts';

/** A decision in words, ready to be laid out on a screen, a sheet or a line of output. */
export interface DecisionReport {
  readonly state: { readonly word: string; readonly means: string };
  readonly headline: string;
  readonly failMode: string;
  readonly release: string;
  readonly points: string;
  readonly findings: readonly FindingWords[];
  readonly signOffs: readonly SignOffReason[];
  /** What each trade must do. */
  readonly work: readonly { readonly trade: string; readonly lines: readonly WorkLine[] }[];
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
export interface WorkLine {
  readonly sentence: string;
  readonly ruleId: string | undefined;
}
export interface ItemLine {
  readonly name: string;
  readonly quantity: number;
  readonly counting: Counting;
  /** The quantity, or why none is priced here: included, kept, a share. */
  readonly quantityWords: string;
  readonly standard: string;
  readonly trade: string;
  readonly ruleId: string | undefined;
}
export interface ScoreLine {
  readonly part: string;
  /** 0 to 100. */
  readonly value: number;
  readonly weight: number;
  readonly points: string;
  readonly runnerUpPoints: string;
}
export interface StrengthWords {
  readonly sentence: string;
  readonly members: readonly { readonly name: string; readonly lbf: string; readonly says: string }[];
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

/** Work from the fit of the device, from the rules, and from the parts each trade must bring. */
function workByTrade(decision: Decision): DecisionReport['work'] {
  const byTrade = new Map<Trade, WorkLine[]>();
  const put = (trade: Trade, line: WorkLine) => {
    const before = byTrade.get(trade) ?? [];
    if (!before.some((one) => one.sentence === line.sentence)) byTrade.set(trade, [...before, line]);
  };
  for (const note of workNotes(decision)) {
    const found = fitNotes[note];
    if (found) put(found.trade, { sentence: found.says, ruleId: undefined });
  }
  for (const step of decision.modifies) {
    if (step.clause.effect === 'modify') {
      put(step.clause.trade, {
        sentence: fillSentence(step.clause.says, decision.slots),
        ruleId: step.rule.id,
      });
    }
  }
  for (const step of decision.requires) {
    if (step.clause.effect !== 'require') continue;
    const [leads, ...others] = byTradeOf(step.clause.items);
    const ruleId = step.rule.id;
    if (leads) put(leads.trade, { sentence: fillSentence(step.clause.says, decision.slots), ruleId });
    // One sentence can ask something of several trades: the others are told what is theirs.
    for (const { trade, names } of others) put(trade, { sentence: `${names.join('; ')}.`, ruleId });
  }
  const parts = partsOf(decision);
  const bought = parts.filter((part) => countingOf(part, parts, leavesOf(decision)) === 'bought');
  for (const { trade, names } of byTradeOf(bought.map((part) => part.item))) {
    if (byTrade.has(trade)) continue;
    put(trade, { sentence: `Furnish and install: ${names.map(midSentence).join('; ')}.`, ruleId: undefined });
  }
  return (Object.keys(trades) as Trade[]).flatMap((trade) => {
    const lines = byTrade.get(trade);
    return lines ? [{ trade: trades[trade], lines }] : [];
  });
}

/** Items by who does the work, the trade of the first one first. */
function byTradeOf(ids: readonly ItemId[]): readonly { readonly trade: Trade; readonly names: string[] }[] {
  const found = new Map<Trade, string[]>();
  for (const id of ids) {
    const { trade, name } = itemOf(id);
    found.set(trade, [...(found.get(trade) ?? []), name]);
  }
  return [...found].map(([trade, names]) => ({ trade, names }));
}

function itemLines(decision: Decision): readonly ItemLine[] {
  const parts = partsOf(decision);
  return parts.map((part) => {
    const counting = countingOf(part, parts, leavesOf(decision));
    const item: { name: string; trade: Trade; standard?: string } = items[part.item];
    return {
      name: item.name,
      quantity: part.quantity,
      counting,
      quantityWords: counting === 'bought' ? String(part.quantity) : countingShort[counting],
      standard: item.standard ?? '',
      trade: trades[item.trade],
      ruleId: part.ruleId,
    };
  });
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

function strengthOf(decision: Decision): StrengthWords | null {
  if (!decision.chosen) return null;
  const found = strengthMembers(decision.chosen.candidate.deviceId, knownValues(decision.slots));
  const range = forceSpan(found.lbf, found.highestLbf, ' to ');
  return {
    sentence: found.willNotHold
      ? 'As surveyed the latch does not engage far enough to hold.'
      : `Holds about ${range}; the weakest member is: ${midSentence(memberNames[found.limitedBy])}. Common practice, no source.`,
    members: found.members.map((member) => ({
      name: member.name,
      lbf: forceSpan(member.lowestLbf, member.highestLbf, '–'),
      says: member.says,
    })),
  };
}

/** Whole pounds: these are default figures, and decimals would say otherwise. */
function forceSpan(lowest: number, highest: number, between: string): string {
  const [low, high] = [Math.round(lowest), Math.round(highest)];
  return low === high ? `${low} lbf` : `${low}${between}${high} lbf`;
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

import { type CodeBasis, defaultBasis } from '../../src/domain/codes/basis.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision, DecisionState } from '../../src/domain/decide/decision.ts';
import { reportOf } from '../../src/domain/words/report.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import { signOffReasons } from '../../src/domain/words/signOff.ts';
import { candidateById, type Release } from '../../src/domain/devices/candidates.ts';
import type { DeviceFamily, FailMode } from '../../src/domain/devices/devices.ts';
import type { ItemId } from '../../src/domain/devices/items.ts';
import type { Facts } from '../../src/domain/model/fact.ts';
import type { FactKey, FactValues } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import { missingKeys } from '../../src/domain/sets/missing.ts';

interface Answer {
  readonly state?: DecisionState;
  /** Any of these, where the texts leave it open which. */
  readonly states?: readonly DecisionState[];
  /** Facts that must still be asked. */
  readonly asks?: readonly FactKey[];
  /** Answers of the survey that must be pointed at. */
  readonly warns?: readonly FactKey[];
  /** What may lead: any of these families. */
  readonly family?: readonly DeviceFamily[];
  readonly release?: readonly Release[];
  readonly failMode?: readonly FailMode[];
  /** Parts that the set must hold, and parts that have no place in it. */
  readonly has?: readonly ItemId[];
  readonly hasNot?: readonly ItemId[];
  /** Candidates that must be ruled out. */
  readonly never?: readonly string[];
  /** Candidates that may not be ruled out. */
  readonly may?: readonly string[];
  /** What must stand on the opening’s sheet, and what must not. */
  readonly says?: readonly RegExp[];
  readonly saysNot?: readonly RegExp[];
  /** Whether a reviewer must sign before issue. */
  readonly signed?: boolean;
}

/** Facts as surveyed; one that is undefined was not asked about. */
export type Surveyed = { readonly [K in keyof FactValues]: FactValues[K] | undefined };

export interface Row {
  readonly opening: string;
  /** The section and edition the answer rests on, or "from memory", or "trade practice". */
  readonly rests: string;
  readonly facts: Surveyed;
  readonly basis?: Partial<CodeBasis>;
  readonly want: Answer;
}

/** Decided as `assess` decides it. */
function decideRow({ facts, basis }: Row): { decision: Decision; missing: readonly FactKey[] } {
  const known: Record<string, { is: 'known'; value: unknown }> = {};
  for (const [key, value] of Object.entries(facts)) {
    if (value !== undefined) known[key] = { is: 'known', value };
  }
  const project = { ...newProject('p', 'Consultant'), basis: { ...defaultBasis, ...basis } };
  const opening = { ...newOpening('o', '101'), facts: known as Facts };
  const decision = decide(project, opening);
  return { decision, missing: missingKeys(project, opening, decision) };
}

function everythingSaid(decision: Decision): string {
  const { findings, signOffs, work, cautions, permits } = reportOf(decision);
  return [
    ...[...findings, ...signOffs, ...cautions, ...permits].map((one) => one.sentence),
    ...work.flatMap(({ lines }) => lines.map((one) => one.sentence)),
  ].join('\n');
}

/** Every difference between the answer given and the one a consultant gives, in words. */
export function differences(row: Row): readonly string[] {
  const { want } = row;
  const { decision, missing } = decideRow(row);
  const found: string[] = [];
  const lead = decision.chosen?.candidate;
  const ruledOut = new Map(
    decision.rejected.map((one) => [one.candidate.id, one.because.map((step) => step.rule.id).join(' ')]),
  );
  const parts = partsOf(decision).map((part) => part.item);
  const must = signOffReasons(decision).filter((reason) => reason.grade === 'must');
  if (want.state && decision.state !== want.state) {
    const why = [...decision.findings, ...decision.refers].map((step) => step.rule.id);
    found.push(`state ${decision.state} instead of ${want.state} (${why.join(' ')})`);
  }
  if (want.states && !want.states.includes(decision.state)) found.push(`state ${decision.state}`);
  for (const fact of want.asks ?? []) if (!missing.includes(fact)) found.push(`${fact} is not asked`);
  for (const fact of want.warns ?? []) {
    const told = decision.findings.some(({ clause }) => clause.effect === 'finding' && clause.field === fact);
    if (!told) found.push(`nothing is said of ${fact}`);
  }
  if (want.family && !(lead && want.family.includes(lead.device.family)))
    found.push(`leads with ${lead?.id}`);
  if (want.release && !(lead && want.release.includes(lead.release))) found.push(`release of ${lead?.id}`);
  if (want.failMode && !(lead && want.failMode.includes(lead.failMode)))
    found.push(`fail mode of ${lead?.id}`);
  for (const item of want.has ?? []) if (!parts.includes(item)) found.push(`lacks ${item}`);
  for (const item of want.hasNot ?? []) if (parts.includes(item)) found.push(`has ${item}`);
  for (const id of [...(want.never ?? []), ...(want.may ?? [])]) {
    if (!candidateById(id)) found.push(`there is no candidate ${id}`);
  }
  for (const id of want.never ?? []) if (!ruledOut.has(id)) found.push(`${id} is not ruled out`);
  for (const id of want.may ?? [])
    if (ruledOut.has(id)) found.push(`${id} is ruled out by ${ruledOut.get(id)}`);
  const sheet = everythingSaid(decision);
  for (const words of want.says ?? []) if (!words.test(sheet)) found.push(`nowhere says ${words}`);
  for (const words of want.saysNot ?? []) if (words.test(sheet)) found.push(`says ${words}`);
  if (want.signed === true && must.length === 0) found.push('nobody must sign');
  if (want.signed === false && must.length > 0) {
    found.push(`must be signed: ${must.map((reason) => reason.ruleId ?? reason.sentence).join(', ')}`);
  }
  return found;
}

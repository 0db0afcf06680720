import type { BuildingFinding } from '../building/finding.ts';
import type { Decision, Decisions } from '../decide/decision.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { inSequence, type Verdict } from '../model/verdict.ts';
import { ruleById } from '../rules/all.ts';
import type { Grade } from '../rules/rule.ts';
import { subjectOf } from './subjects.ts';
import { midSentence } from '../text/midSentence.ts';
import { gravest, reviewState, type Standing } from './status.ts';
import { isApproval, type ReviewState } from './words.ts';

/** One question as it is asked at one opening. */
export interface AskedAt {
  readonly opening: Opening;
  readonly decision: Decision;
  /** The flags it is made of here: two clauses of one rule are one question. */
  readonly flags: readonly string[];
  readonly sentence: string;
  /** The gravest state of its flags, and who gave it. */
  readonly state: ReviewState;
  readonly by: Standing | null;
}

/** One question, with every opening it is asked at: one answer may settle them all. */
export interface Question {
  readonly id: string;
  /** Every flag that an answer to it answers. */
  readonly flags: readonly string[];
  readonly title: string;
  readonly grade: Exclude<Grade, 'note'>;
  readonly ruleIds: readonly string[];
  readonly at: readonly AskedAt[];
  /** What was found where no single opening carries it. */
  readonly building: readonly string[];
  readonly state: ReviewState;
}

interface Gathered {
  readonly grade: Question['grade'];
  readonly flags: Set<string>;
  readonly ruleIds: Set<string>;
  readonly at: Map<string, AskedAt>;
}

/** What must be signed comes first, and of that what concerns most openings. */
export function questionsOf(
  project: Project,
  decisions: Decisions,
  findings: readonly BuildingFinding[],
): readonly Question[] {
  const found = new Map<string, Gathered>();
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    for (const { reason, state, by } of reviewState(project, opening, decision).flags) {
      const { grade, flag, sentence } = reason;
      if (grade === 'note') continue;
      const ruleId = ruleOf(flag, reason.ruleId);
      const id = `${grade}:${ruleId === undefined ? flag : subjectOf(ruleId)}`;
      const there = found.get(id) ?? { grade, flags: new Set(), ruleIds: new Set(), at: new Map() };
      there.flags.add(flag);
      if (ruleId !== undefined) there.ruleIds.add(ruleId);
      const asked = { opening, decision, flags: [flag], sentence, state, by };
      const before = there.at.get(opening.id);
      there.at.set(opening.id, before ? together(before, asked) : asked);
      found.set(id, there);
    }
  }
  const asked = [...found].map(([id, { grade, ...gathered }]): Question => {
    const at = [...gathered.at.values()];
    const [flags, ruleIds] = [[...gathered.flags], [...gathered.ruleIds]];
    const state = gravest(at.map((one) => one.state));
    const title = titleOf(flags[0] ?? '', leadOf(ruleIds));
    return { id, flags, title, grade, ruleIds, at, building: [], state };
  });
  return [...asked, ...withoutOpening(project, findings)].toSorted(
    (a, b) => Number(a.grade === 'should') - Number(b.grade === 'should') || b.at.length - a.at.length,
  );
}

/** Two flags of one question at one opening: both sentences, and the graver state with its name. */
function together(a: AskedAt, b: AskedAt): AskedAt {
  const graver = gravest([a.state, b.state]) === a.state ? a : b;
  const sentence = a.sentence === b.sentence ? a.sentence : `${a.sentence} ${b.sentence}`;
  return { ...graver, flags: [...a.flags, ...b.flags], sentence };
}

/** The rule that gives the question its title: the one the others are asked with. */
const leadOf = (ruleIds: readonly string[]) => ruleIds.find((id) => subjectOf(id) === id) ?? ruleIds[0];

/** Severe findings that name no opening, such as a space without a door: somebody signs for them all the same. */
function withoutOpening(project: Project, findings: readonly BuildingFinding[]): readonly Question[] {
  const found = new Map<string, string[]>();
  for (const { severity, openingIds, kind, ruleId, spaceId, says } of findings) {
    if (severity !== 'severe' || openingIds.length > 0) continue;
    const flag = `building:${ruleId ?? kind}:${spaceId ?? ''}`;
    found.set(flag, [...new Set([...(found.get(flag) ?? []), says])]);
  }
  return [...found].map(([flag, building]): Question => {
    const last = lastAbout(project, flag);
    const stale = last !== undefined && String(last.saw.building) !== String(building);
    const state = last === undefined ? 'open' : stale ? 'stale' : (last.verdict as ReviewState);
    const ruleId = ruleOf(flag, undefined);
    const [title, ruleIds] = [titleOf(flag, ruleId), ruleId === undefined ? [] : [ruleId]];
    return { id: flag, flags: [flag], title, grade: 'must', ruleIds, at: [], building, state };
  });
}

function lastAbout({ verdicts }: Project, flag: string): Verdict | undefined {
  const all = inSequence(verdicts);
  return all.findLast(
    (one) =>
      one.verdict !== 'withdrawn' &&
      one.openingIds.length === 0 &&
      one.questions.includes(flag) &&
      !all.some((other) => other.withdraws === one.id),
  );
}

function ruleOf(flag: string, ruleId: string | undefined): string | undefined {
  const named = /^building:([A-Z]+-[\w-]+)/.exec(flag)?.[1];
  return ruleId ?? (named !== undefined && ruleById.has(named) ? named : undefined);
}

const ownTitles: Readonly<Record<string, string>> = {
  byHand: 'Another arrangement chosen by hand',
  refusedByRule: 'Refused by rule, chosen by a person',
  trapped: 'People who cannot leave',
  keyed: 'People who leave only with a key or card',
  noReentry: 'No way back from the stair',
  staffOnly: 'People who leave only by staff',
  exitLost: 'An exit that is lost',
  oneExit: 'One exit only',
  noOutside: 'No way to the outside',
  exitsShort: 'Too few exits',
  capacityShort: 'Too little width for the people inside',
  doorNarrow: 'A door too narrow',
  panicMissing: 'Panic hardware missing',
  blockedExit: 'Blocked egress',
  blockedOtherWay: 'A second way that is blocked',
  ratedNotLatched: 'A fire door that does not latch',
  ratedStaysOpen: 'A fire door that stays open',
  stairSideLocked: 'The stair side stays locked',
};

/** What a question is called, whatever it says at one opening. */
export function titleOf(flag: string, ruleId: string | undefined): string {
  const [kind = '', rest = ''] = flag.split(':');
  const label = isFactKey(rest) ? fieldInfo(rest).label : rest;
  if (kind === 'assumed') return `Assumed, not surveyed: ${midSentence(label)}`;
  if (kind === 'unmet') return `Recorded as needed and not met: ${midSentence(label)}`;
  if (kind === 'secondHand') return `${rest} decides and was read second-hand`;
  const rule = ruleId === undefined ? undefined : ruleById.get(ruleId);
  const own = ownTitles[flag] ?? ownTitles[rest];
  if (own !== undefined) return own;
  if (rule) return rule.title;
  return kind === 'building' ? 'Found in the building' : 'Found when every condition is run through';
}

export interface OpenSignatures {
  readonly openings: number;
  readonly questions: number;
  /** Signatures that something changed under. */
  readonly stale: number;
  /** True while anything of it is open: no issue is final then. */
  readonly preliminary: boolean;
  /** For every page: "Preliminary: 22 questions at 31 openings are not signed." Empty when nothing is open. */
  readonly says: string;
}

/** What must be signed before issue and is not; `unsigned` are the openings that wait (`unsignedOpenings`). */
export function openSignatures(questions: readonly Question[], unsigned: readonly Opening[]): OpenSignatures {
  const must = questions.filter((one) => one.grade === 'must');
  const open = must.filter((one) => !isApproval(one.state));
  const at = open.flatMap((one) => one.at.filter(({ state }) => !isApproval(state)));
  const openings = unsigned.length;
  const stale = at.filter(({ state }) => state === 'stale').length;
  const says =
    open.length + openings === 0
      ? ''
      : `Preliminary: ${open.length === 1 ? '1 question' : `${open.length} questions`} at ${openings === 1 ? '1 opening' : `${openings} openings`} not signed.`;
  return { openings, questions: open.length, stale, preliminary: open.length + openings > 0, says };
}

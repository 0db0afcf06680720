import type { BuildingFinding } from '../building/finding.ts';
import type { Decision } from '../decide/decision.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { inSequence, type Verdict } from '../model/verdict.ts';
import { ruleById } from '../rules/all.ts';
import type { Grade } from '../rules/rule.ts';
import { midSentence } from '../text/midSentence.ts';
import { gravest, reviewState, type Standing } from './status.ts';
import { isApproval, type ReviewState } from './words.ts';

/** One question as it is asked at one opening. */
export interface AskedAt {
  readonly opening: Opening;
  readonly decision: Decision;
  readonly sentence: string;
  readonly state: ReviewState;
  readonly by: Standing | null;
}

/** One question, with every opening it is asked at: one answer may settle them all. */
export interface Question {
  readonly flag: string;
  readonly title: string;
  readonly grade: Exclude<Grade, 'note'>;
  readonly ruleId: string | undefined;
  readonly at: readonly AskedAt[];
  /** What was found where no single opening carries it. */
  readonly building: readonly string[];
  readonly state: ReviewState;
}

type Decisions = ReadonlyMap<string, Decision>;

/** What must be signed comes first, and of that what concerns most openings. */
export function questionsOf(
  project: Project,
  decisions: Decisions,
  findings: readonly BuildingFinding[],
): readonly Question[] {
  const found = new Map<string, { grade: Question['grade']; ruleId: string | undefined; at: AskedAt[] }>();
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    for (const { reason, state, by } of reviewState(project, opening, decision).flags) {
      if (reason.grade === 'note') continue;
      const there = found.get(reason.flag) ?? {
        grade: reason.grade,
        ruleId: ruleOf(reason.flag, reason.ruleId),
        at: [],
      };
      there.at.push({ opening, decision, sentence: reason.sentence, state, by });
      if (reason.grade === 'must') there.grade = 'must';
      found.set(reason.flag, there);
    }
  }
  const asked = [...found].map(([flag, { grade, ruleId, at }]): Question => {
    const state = gravest(at.map((one) => one.state));
    return { flag, grade, ruleId, at, building: [], state, title: titleOf(flag, ruleId) };
  });
  return [...asked, ...withoutOpening(project, findings)].toSorted(
    (a, b) => Number(a.grade === 'should') - Number(b.grade === 'should') || b.at.length - a.at.length,
  );
}

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
    return { flag, title: titleOf(flag, ruleId), grade: 'must', ruleId, at: [], building, state };
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
  if (rule) return kind === 'building' ? `${rule.title}, along the egress path` : rule.title;
  return kind === 'building' ? 'Found in the building' : 'Found when every condition is run through';
}

export interface OpenSignatures {
  /** Must-sign flags that no standing approval answers. */
  readonly flags: number;
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
  const flags = at.length + open.filter((one) => one.at.length === 0).length;
  return { flags, openings, questions: open.length, stale, preliminary: open.length + openings > 0, says };
}

import { basisInWords } from '../../domain/codes/basis.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import { maybesOf } from '../../domain/decide/maybe.ts';
import type { Step } from '../../domain/decide/ruleBook.ts';
import { signOffReasons } from '../../domain/decide/signOff.ts';
import { noWayForward, waysForward } from '../../domain/decide/whatWouldChange.ts';
import { stepInWords } from '../../domain/decide/words.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import type { ComparisonRecord } from './comparisonRecord.ts';
import type { FactKey } from '../../domain/model/fields.ts';
import { type Doubt, doubtsAt } from '../../domain/project/doubts.ts';
import { orderState } from '../../domain/schedules/forOrder.ts';
import { fireAlarmAt } from '../../domain/schedules/openings.ts';
import { reviewState } from '../../domain/review/status.ts';
import type { ReviewState } from '../../domain/review/words.ts';
import { missingKeys } from '../../domain/schedules/missing.ts';
import { type SetNumbers } from '../../domain/schedules/sets.ts';
import type { Opening, Project } from '../../domain/model/project.ts';

export interface SaidByRule {
  readonly rule: string;
  readonly says: string;
  readonly cites: readonly string[];
}

/** One opening's decision for another program: one JSON object, ids where a program compares, words beside them. */
export interface DecisionRecord {
  readonly mark: string;
  /** Number of the hardware set; null while nothing is chosen. */
  readonly set: string | null;
  /** The project keeps this number in later issues. */
  readonly setFixed: boolean;
  readonly state: Decision['state'];
  /** Settled, and nothing unknown can change what is ordered. */
  readonly complete: boolean;
  readonly device: string | null;
  readonly failMode: string | null;
  readonly release: string | null;
  /** What happens on fire alarm, in the words of the schedule; null while nothing is chosen. */
  readonly onFireAlarm: string | null;
  /** Points of 100, to a tenth. */
  readonly score: number | null;
  readonly signOff: readonly {
    readonly grade: string;
    readonly rule: string | null;
    readonly says: string;
  }[];
  /** Where the reviewer's mark stands; not needed where no name is asked for. */
  readonly review: ReviewState;
  readonly requires: readonly (SaidByRule & { readonly items: readonly string[] })[];
  /** Needed, or ruled out by the facts named. */
  readonly maybe: readonly {
    readonly rule: string;
    readonly says: string;
    readonly items: readonly string[];
    readonly facts: readonly FactKey[];
  }[];
  readonly cautions: readonly SaidByRule[];
  readonly findings: readonly (SaidByRule & { readonly field: string; readonly severity: string })[];
  /** Keys of unknown facts on which something still waits. */
  readonly missing: readonly FactKey[];
  /** How many arrangements the rules and the door ruled out. */
  readonly rejected: number;
  /** Where no hardware works: the least work after which something would; null everywhere else. */
  readonly waysForward: {
    readonly says: string;
    readonly ways: readonly WayRecord[];
  } | null;
  /** What the file held and could not be read or cannot be right; empty in a sound file. */
  readonly doubts: readonly string[];
  readonly basis: string;
  readonly caution: string;
  /** Where another basis was asked for: what it would change. */
  readonly comparison?: ComparisonRecord;
}

export interface WayRecord {
  readonly device: string;
  readonly failMode: string;
  readonly release: string;
  /** Points of 100 once the work is done, to a tenth. */
  readonly score: number;
  readonly changes: readonly {
    readonly field: FactKey;
    readonly value: string | number | boolean;
    readonly trade: string;
    readonly says: string;
  }[];
}

export function decisionRecord(
  project: Project,
  opening: Opening,
  decision: Decision,
  numbers: SetNumbers,
  doubts: readonly Doubt[],
): DecisionRecord {
  const { chosen } = decision;
  const said = (step: Step): SaidByRule => {
    const { ruleId, sentence, cites } = stepInWords(step, decision);
    return { rule: ruleId, says: sentence, cites };
  };
  return {
    mark: opening.mark,
    set: numbers.get(opening.id) ?? null,
    setFixed: isFixed(project, numbers.get(opening.id)),
    state: decision.state,
    complete: orderState(project, opening, decision) === 'complete',
    device: chosen?.candidate.deviceId ?? null,
    failMode: chosen?.candidate.failMode ?? null,
    release: chosen?.candidate.release ?? null,
    onFireAlarm: chosen ? fireAlarmAt(project, opening, decision) : null,
    score: chosen ? chosen.score.tenths / 10 : null,
    review: reviewState(project, opening, decision).state,
    signOff: signOffReasons(decision).map((reason) => ({
      grade: reason.grade,
      rule: reason.ruleId ?? null,
      says: reason.sentence,
    })),
    requires: decision.requires.map((step) => ({
      ...said(step),
      items: step.clause.effect === 'require' ? step.clause.items : [],
    })),
    maybe: maybesOf(decision).map(({ ruleId, sentence, items, facts }) => ({
      rule: ruleId,
      says: sentence,
      items,
      facts,
    })),
    cautions: decision.cautions.map(said),
    findings: decision.findings.map((step) => ({
      ...said(step),
      field: step.clause.effect === 'finding' ? step.clause.field : '',
      severity: step.clause.effect === 'finding' ? step.clause.severity : '',
    })),
    missing: missingKeys(project, opening, decision),
    rejected: decision.rejected.length,
    waysForward: decision.state === 'none' ? waysRecord(project, opening, decision) : null,
    doubts: doubtsAt(doubts, opening.id),
    basis: basisInWords(decision.basis),
    caution: standingCaution,
  };
}

function isFixed({ hardwareSets }: Project, number: string | undefined): boolean {
  return Object.values(hardwareSets).some((set) => set.number === number);
}

function waysRecord(project: Project, opening: Opening, decision: Decision): DecisionRecord['waysForward'] {
  const ways = waysForward(project, opening, decision).map(
    ({ candidate, changes, tenths }): WayRecord => ({
      device: candidate.deviceId,
      failMode: candidate.failMode,
      release: candidate.release,
      score: tenths / 10,
      changes: changes.map(({ fact, value, trade, says }) => ({ field: fact, value, trade, says })),
    }),
  );
  return {
    says:
      ways.length > 0
        ? 'No workable hardware as it stands; this work would let something stand.'
        : noWayForward(decision),
    ways,
  };
}

/** One line, without a line break inside: JSON escapes those of the text. */
export function recordLine(record: DecisionRecord, pretty = false): string {
  return JSON.stringify(record, null, pretty ? 2 : undefined);
}

import { basisInWords } from '../../domain/codes/basis.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import { maybesOf } from '../../domain/words/maybe.ts';
import type { Step } from '../../domain/decide/ruleBook.ts';
import { signOffReasons } from '../../domain/words/signOff.ts';
import { waysForward } from '../../domain/decide/whatWouldChange.ts';
import { noWayForward } from '../../domain/words/whatWouldChange.ts';
import { stepInWords } from '../../domain/words/steps.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { type Doubt, doubtsAt } from '../../domain/project/doubts.ts';
import { orderState } from '../../domain/sets/forOrder.ts';
import { fireAlarmAt } from '../../domain/schedules/openings.ts';
import { reviewState } from '../../domain/review/status.ts';
import { missingKeys } from '../../domain/sets/missing.ts';
import { type SetNumbers } from '../../domain/sets/sets.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import type { DecisionRecord, SaidByRule, WayRecord } from './schema.ts';

/** One opening's decision for another program. */
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
    globalId: opening.externalId ?? null,
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

import type { Decision } from '../../domain/decide/decision.ts';
import { openingsInOrder, type Project } from '../../domain/model/project.ts';
import {
  type ApprovalCondition,
  conditionInWords,
  conditionOfApproval,
  conditionsAt,
} from '../../domain/review/conditionsAt.ts';
import { setNumbersOf } from '../../domain/sets/sets.ts';
import { type Simulated, simulateOpening } from '../../domain/decide/whatHappens.ts';
import { acceptanceTestOf, noTestBecause } from './acceptance.ts';
import { type Sequence, sequenceOf } from './sequence.ts';
import type { TestLine } from './testLine.ts';

/** One sequence for all openings that behave alike, under the number of their hardware set. */
export interface SequenceSheet extends Sequence {
  readonly setId: string;
  readonly marks: readonly string[];
  /** Openings whose decision is not settled: the sheet must say that it may still change. */
  readonly provisional: readonly string[];
}

/** One test sheet for one opening. */
export interface TestSheet {
  readonly openingId: string;
  readonly mark: string;
  readonly setId: string;
  readonly title: string;
  readonly provisional: boolean;
  readonly lines: readonly TestLine[];
  /** Why there are no lines; empty where there are. */
  readonly noTest: readonly string[];
}

/**
 * Sequences by hardware set. Openings of one set may still differ in what happens (set hours, fire alarm, battery),
 * so a set gets as many sheets as it behaves in ways.
 */
export function sequenceSheets(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
): readonly SequenceSheet[] {
  const groups = new Map<string, Group>();
  for (const { mark, setId, simulated, conditions } of running(project, decisions)) {
    const key = JSON.stringify([
      conditions,
      setId,
      simulated.arrangement,
      simulated.setting.operatorDrives,
      simulated.setting.rated,
    ]);
    const group = groups.get(key) ?? { simulated, setId, conditions, marks: [], open: [] };
    groups.set(key, group);
    group.marks.push(mark);
    if (simulated.provisional) group.open.push(mark);
  }
  return [...groups.values()].map(({ simulated, conditions, setId, marks, open }) => ({
    ...withConditions(sequenceOf(simulated), conditions),
    setId,
    marks,
    provisional: open,
  }));
}

interface Group {
  readonly simulated: Simulated;
  readonly setId: string;
  readonly conditions: readonly ApprovalCondition[];
  readonly marks: string[];
  readonly open: string[];
}

/** What an approval asked for is part of how the opening works. */
function withConditions(sequence: Sequence, conditions: readonly ApprovalCondition[]): Sequence {
  const more = conditions.map((one) => ({ event: conditionOfApproval, says: conditionInWords(one) }));
  return { ...sequence, lines: [...sequence.lines, ...more] };
}

export function testSheets(project: Project, decisions: ReadonlyMap<string, Decision>): readonly TestSheet[] {
  return running(project, decisions).map(({ openingId, mark, setId, simulated, decision, conditions }) => ({
    openingId,
    mark,
    setId,
    title: sequenceOf(simulated).title,
    provisional: simulated.provisional,
    lines: acceptanceTestOf({ simulated, decision, conditions }),
    noTest: noTestBecause({ simulated, decision }),
  }));
}

function running(project: Project, decisions: ReadonlyMap<string, Decision>) {
  const setOf = setNumbersOf(project, decisions);
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const simulated = decision && simulateOpening(project, opening, decision);
    if (!simulated) return [];
    const setId = setOf.get(opening.id) ?? '';
    const conditions = conditionsAt(project, opening, decision);
    return [{ openingId: opening.id, mark: opening.mark, setId, simulated, decision, conditions }];
  });
}

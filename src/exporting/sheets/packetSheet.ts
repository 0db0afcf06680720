import { citeInWords, isUsed } from '../../domain/codes/sections.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { DecisionReport } from '../../domain/words/report.ts';
import { simulateOpening } from '../../domain/decide/whatHappens.ts';
import type { Project } from '../../domain/model/project.ts';
import { forTheAuthority, proposedAt, type SaidAt, saidAt } from '../../domain/review/packet.ts';
import type { AskedAt, Question } from '../../domain/review/questions.ts';
import { reviewStateWords } from '../../domain/review/words.ts';
import { ruleById } from '../../domain/rules/all.ts';
import { confidenceInWords } from '../../domain/rules/rule.ts';
import { condition, conditionIds } from '../../domain/simulate/conditions.ts';
import { expectedInWords } from '../../domain/simulate/outcomeWords.ts';
import { counted } from '../../domain/text/counted.ts';
import { drawingsAt, openingDrawings } from '../drawing/kinds.ts';
import type { Drawing } from '../drawing/scene.ts';
import { type MarkOnFile, markOf } from './markOnFile.ts';
import { placeInWords } from './openingSheet.ts';

/** What the authority is asked, with all that an answer needs and nothing else. */
export interface PacketSheet {
  readonly says: string;
  readonly questions: readonly PacketQuestion[];
  /** Each opening once, however many questions concern it. */
  readonly openings: readonly PacketOpening[];
}

export interface PacketQuestion {
  readonly number: number;
  readonly title: string;
  readonly state: string;
  readonly asked: readonly SaidAt[];
  /** Sections with their edition, and how they were read; empty where no rule stands behind the question. */
  readonly sections: readonly string[];
  readonly proposed: readonly SaidAt[];
  readonly onFile: readonly MarkOnFile[];
}

export interface PacketOpening {
  readonly id: string;
  readonly mark: string;
  readonly place: string;
  /** "Questions 1, 4". */
  readonly questions: string;
  readonly proposed: string;
  readonly drawings: readonly Drawing[];
  readonly facts: readonly { readonly label: string; readonly value: string }[];
  readonly table: readonly { readonly name: string; readonly says: string }[];
}

export function packetSheet(
  project: Project,
  all: readonly Question[],
  reportOf: (decision: Decision) => DecisionReport,
): PacketSheet {
  const questions = forTheAuthority(all);
  const numbers = new Map<string, { readonly one: AskedAt; readonly numbers: number[] }>();
  for (const [index, { at }] of questions.entries()) {
    for (const one of at) {
      const there = numbers.get(one.opening.id) ?? { one, numbers: [] };
      there.numbers.push(index + 1);
      numbers.set(one.opening.id, there);
    }
  }
  return {
    says: `${counted(questions.length, 'question')}, ${counted(numbers.size, 'opening')}`,
    questions: questions.map((question, index) => asked(project, question, index + 1)),
    openings: [...numbers.values()].map(({ one, numbers: at }) => shown(project, one, at, reportOf)),
  };
}

function asked(project: Project, question: Question, number: number): PacketQuestion {
  const { title, state, at, building, ruleIds } = question;
  return {
    number,
    title,
    state: reviewStateWords[state],
    asked: [...saidAt(at, (one) => one.sentence), ...building.map((says) => ({ says, marks: [] }))],
    sections: ruleIds.flatMap((ruleId) => sectionsUsed(ruleId, project)),
    proposed: saidAt(at, proposedAt),
    onFile: [...new Map(at.flatMap(({ by }) => (by ? [[by.verdict.id, by] as const] : []))).values()].map(
      markOf,
    ),
  };
}

/** Only what is adopted here: a section nobody goes by helps nobody to answer. */
function sectionsUsed(ruleId: string, { basis }: Project): readonly string[] {
  const rule = ruleById.get(ruleId);
  const cites = rule?.cites.filter((cite) => isUsed(cite, basis)) ?? [];
  if (!rule || cites.length === 0) return [];
  return [...cites.map((cite) => citeInWords(cite, basis)), confidenceInWords(rule.confidence)];
}

function shown(
  project: Project,
  one: AskedAt,
  numbers: readonly number[],
  reportOf: (decision: Decision) => DecisionReport,
): PacketOpening {
  const { opening, decision } = one;
  const name = (id: string | null, of: 'spaces' | 'floors') =>
    id === null ? '' : (project[of][id]?.name ?? '');
  const ran = simulateOpening(project, opening, decision);
  return {
    id: opening.id,
    mark: opening.mark,
    place: placeInWords({
      floor: name(opening.floorId, 'floors'),
      from: name(opening.fromSpaceId, 'spaces'),
      to: name(opening.toSpaceId, 'spaces'),
    }),
    questions: `${numbers.length === 1 ? 'Question' : 'Questions'} ${numbers.join(', ')}`,
    proposed: proposedAt(one),
    drawings: drawingsAt(openingDrawings, decision, 'crowdedSheet'),
    facts: reportOf(decision).facts.map(({ label, value, standing }) => ({
      label,
      value: standing === 'known' ? value : `${value} (${standing})`,
    })),
    table: ran
      ? conditionIds
          .filter((id) => ran.outcomes[id].applies)
          .map((id) => ({ name: condition(id).name, says: expectedInWords(ran.outcomes[id]) }))
      : [],
  };
}

import type { Edit } from '../commands/command.ts';
import { answersInOrder, type Remark } from '../model/verdict.ts';
import type { Opening, Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';

export const remarkWords = { question: 'Question', comment: 'Comment' } as const;

/** Who types, and when. */
export interface Hand {
  readonly id: string;
  readonly by: string;
  readonly at: string;
}

/** Comments and questions of an opening: what is open first, then the newest. */
export function remarksAt({ remarks }: Project, openingId: string): readonly Remark[] {
  return Object.values(remarks)
    .filter((one) => one.openingId === openingId)
    .toSorted(
      (a, b) =>
        Number(a.closed !== null) - Number(b.closed !== null) || (a.at < b.at ? 1 : a.at > b.at ? -1 : 0),
    );
}

/** A sentence where it cannot be kept as it is. */
export function remarkProblem(text: string): string | undefined {
  if (text.trim() === '') return 'Say what it is about.';
  return text.trim().length > 2000 ? 'Two thousand characters at most.' : undefined;
}

export function newRemark(opening: Opening, kind: Remark['kind'], text: string, hand: Hand): Edit {
  const { id, by, at } = hand;
  return {
    kind: 'putRemark',
    id,
    value: { id, openingId: opening.id, kind, text: text.trim(), by, at, answers: {}, closed: null },
  };
}

export function answerRemark(remark: Remark, text: string, { id, by, at }: Hand): Edit {
  const answers = { ...remark.answers, [id]: { id, text: text.trim(), by, at } };
  return { kind: 'putRemark', id: remark.id, value: { ...remark, answers } };
}

/** Closed, or opened again with null. */
export function closeRemark(remark: Remark, hand: Omit<Hand, 'id'> | null): Edit {
  const closed = hand === null ? null : { by: hand.by, at: hand.at };
  return { kind: 'putRemark', id: remark.id, value: { ...remark, closed } };
}

/** "1 open question, 2 open comments"; empty where nothing is open. */
export function openRemarksInWords(remarks: readonly Remark[]): string {
  const open = remarks.filter(({ closed }) => closed === null);
  const count = (kind: Remark['kind']) => open.filter((one) => one.kind === kind).length;
  return [
    ...(count('question') > 0 ? [counted(count('question'), 'open question')] : []),
    ...(count('comment') > 0 ? [counted(count('comment'), 'open comment')] : []),
  ].join(', ');
}

/** Open comments and questions for paper: "Question (J. Reviewer, 2026-03-02): Is it staffed? Answer: Yes." */
export function openRemarksOnPaper(project: Project, openingId: string): readonly string[] {
  return remarksAt(project, openingId)
    .filter(({ closed }) => closed === null)
    .map((remark) => {
      const { kind, text, by, at } = remark;
      const from = [by, at.slice(0, 10)].filter((one) => one !== '').join(', ');
      const answers = answersInOrder(remark).map((one) => ` Answer: ${one.text}`);
      return `${remarkWords[kind]} (${from}): ${text}${answers.join('')}`;
    });
}

/** "answered", "waits for an answer", "closed by A. Surveyor". */
export function remarkState(remark: Remark): string {
  if (remark.closed !== null) return `closed${remark.closed.by === '' ? '' : ` by ${remark.closed.by}`}`;
  if (remark.kind === 'comment') return 'open';
  return answersInOrder(remark).length === 0 ? 'waits for an answer' : 'answered, not closed yet';
}

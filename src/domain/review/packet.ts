import { basisInWords } from '../codes/basis.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { stateInWords } from '../words/states.ts';
import type { Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';
import type { AskedAt, Question } from './questions.ts';
import { isApproval } from './words.ts';

/** What goes to the authority: everything that must be signed and has no standing approval. */
export function forTheAuthority(questions: readonly Question[]): readonly Question[] {
  return questions
    .filter(({ grade, state }) => grade === 'must' && !isApproval(state))
    .map((question) => ({ ...question, at: question.at.filter(({ state }) => !isApproval(state)) }));
}

/** A sentence, and the openings it is said of. */
export interface SaidAt {
  readonly says: string;
  readonly marks: readonly string[];
}

/** Openings of which the same is said stand together. */
export function saidAt(at: readonly AskedAt[], sentenceOf: (one: AskedAt) => string): readonly SaidAt[] {
  return alike(at, sentenceOf).map(({ says, at: those }) => ({
    says,
    marks: those.map(({ opening }) => opening.mark),
  }));
}

/** The same, with all that is asked at each opening. */
export function alike(
  at: readonly AskedAt[],
  sentenceOf: (one: AskedAt) => string,
): readonly { readonly says: string; readonly at: readonly AskedAt[] }[] {
  const found = new Map<string, AskedAt[]>();
  for (const one of at) {
    const says = sentenceOf(one);
    found.set(says, [...(found.get(says) ?? []), one]);
  }
  return [...found].map(([says, those]) => ({ says, at: those }));
}

/** What the project proposes at an opening, for the authority to accept or not. */
export function proposedAt({ decision }: AskedAt): string {
  const { chosen } = decision;
  if (!chosen) return `Nothing is proposed. ${stateInWords(decision).means}`;
  return `${candidateInWords(chosen.candidate)}. Egress: ${midSentence(releaseInWords(chosen.candidate))}.`;
}

/** What the authority can answer; the last becomes a local amendment, the others a verdict. */
export const authorityAnswers = [
  'Accepted as proposed',
  'Accepted with conditions',
  'Not accepted',
  'Applies to every opening like these, from now on',
] as const;

export const answersComeBack =
  'An answer to one question is entered as a verdict on the Review page, under the name of whoever gave it, with the letter as its document. An answer that applies to every opening like these is entered as a local amendment; the openings are then decided under it.';

/** The letter as it is offered; whoever sends it edits it. It claims nothing that the packet does not show. */
export function letterToAuthority(project: Project, questions: readonly Question[], date: string): string {
  const openings = new Set(questions.flatMap(({ at }) => at.map(({ opening }) => opening.id))).size;
  const asks = counted(questions.length, 'question');
  return [
    date,
    `To: ${project.jurisdiction.trim() || 'Authority having jurisdiction'}`,
    `Project: ${project.name}`,
    '',
    `We ask for your decision on ${asks} about access control and egress at ${counted(openings, 'opening')} of this building, before hardware is ordered. The project is drawn up under ${basisInWords(project.basis)}.`,
    '',
    'For each question the packet names the openings, the code sections we read, and the answer we propose. Drawings, what each opening does in every condition, and the facts relied on follow. What is assumed and not surveyed says so.',
    '',
    'Please answer in the box under each question, or by letter. Where your answer applies to other openings as well, please say to which.',
    '',
    project.preparedBy.trim() || 'Prepared by: not stated',
  ].join('\n');
}

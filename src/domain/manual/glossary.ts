import { scorePartWords } from '../words/ranking.ts';
import { stateWords } from '../words/states.ts';
import { scoreParts } from '../model/project.ts';
import { gridKeys } from '../grid/keys.ts';
import { conditions } from '../simulate/conditions.ts';
import { scorePartMeans } from '../project/weightsMean.ts';
import { deviceTerms, failModeTerms, releaseTerms } from './glossary/arrangement.ts';
import { codeTerms, commandTerms, decisionTerms, openingTerms, reviewTerms } from './glossary/general.ts';
import { editTerms, outcomeTerms, pageTerms, severityTerms, verdictTerms } from './glossary/product.ts';
import { own, type Term, type TermGroup } from './glossary/term.ts';

export { type SurveyTerm, surveyTerms } from './glossary/survey.ts';
export { alsoCalledInWords, origins, type Term, type TermGroup } from './glossary/term.ts';

const stateTerms: readonly Term[] = Object.values(stateWords).map(({ word, means }) => own(word, means));
const scoreTerms: readonly Term[] = scoreParts.map((part) => own(scorePartWords[part], scorePartMeans[part]));

/** Situations in which every opening is tried. */
const conditionTerms: readonly Term[] = Object.values(conditions).map(({ name, means }) => own(name, means));

const sorted = (terms: readonly Term[]) => terms.toSorted((a, b) => (a.term < b.term ? -1 : 1));

/** Every word a screen or a print uses, by where it is met. Questions of the survey stand apart. */
export const glossary: readonly TermGroup[] = [
  { id: 'opening', name: 'Doors, frames and hardware', terms: sorted(openingTerms) },
  { id: 'device', name: 'Locking devices', terms: sorted(deviceTerms) },
  { id: 'failMode', name: 'When lock power is lost', terms: failModeTerms },
  { id: 'release', name: 'Egress', terms: releaseTerms },
  { id: 'code', name: 'Codes and buildings', terms: sorted(codeTerms) },
  { id: 'decision', name: 'How a decision is told', terms: [...stateTerms, ...sorted(decisionTerms)] },
  { id: 'condition', name: 'What happens when', terms: conditionTerms },
  { id: 'outcome', name: 'What happens then', terms: [...outcomeTerms, ...severityTerms] },
  { id: 'score', name: 'Ranking weights', terms: scoreTerms },
  { id: 'review', name: 'Review and issue', terms: [...verdictTerms, ...sorted(reviewTerms)] },
  { id: 'page', name: 'Pages', terms: pageTerms },
  { id: 'command', name: 'What the buttons do', terms: sorted(commandTerms) },
  { id: 'edit', name: 'What one step changes', terms: sorted(Object.values(editTerms)) },
];

/** What the engine leaves to people, said where anybody can find it. */
export const notDecided: readonly string[] = [
  'Whether an opening meets a code. It says what it found, on which facts, under which edition.',
  'What a local amendment says, unless the project enters it.',
  'Whether a label, a listing or a letter of the authority is there; it asks, and believes the answer.',
  'Locks of detention and correction: those openings go to a reviewer as they stand.',
  'Products, makers and prices: it names kinds of device and the standard they are bought to.',
  'How work is done: wiring, fire alarm and cutting of labeled doors belong to people licensed for it.',
  'Whether a building may be used while a lock is being changed.',
];

export interface KeyHelp {
  readonly where: string;
  readonly keys: readonly { readonly press: readonly string[]; readonly does: string }[];
}

export const keyboardHelp: readonly KeyHelp[] = [
  {
    where: 'Everywhere',
    keys: [
      { press: ['Ctrl', 'Z'], does: 'Undo the last step' },
      { press: ['Ctrl', 'Shift', 'Z'], does: 'Redo' },
      { press: ['Tab'], does: 'To the next field or button; the first Tab offers the way to the content' },
      { press: ['Enter'], does: 'Keep what was typed' },
    ],
  },
  {
    where: 'In the schedule',
    keys: gridKeys,
  },
  {
    where: 'In a group of answers',
    keys: [
      { press: ['↑', '↓'], does: 'To the other answers' },
      { press: ['Space'], does: 'Tick or untick' },
    ],
  },
];

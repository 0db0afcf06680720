import { type DecisionState } from '../decide/decision.ts';
import { stateWords } from '../words/states.ts';

/** The page of help: every key that does something, and every word a newcomer trips over. */
export interface HelpLine {
  readonly name: string;
  readonly says: string;
}

export const keysEverywhere: readonly HelpLine[] = [
  { name: 'Ctrl + Z', says: 'undoes the last edit; Ctrl + Shift + Z redoes it.' },
  { name: '?', says: 'opens this help.' },
];

export const keysOnOpening: readonly HelpLine[] = [
  { name: 'Alt + Page Down', says: 'goes to the next opening and stays in the same field.' },
  { name: 'Alt + Page Up', says: 'goes to the one before.' },
];

const order: readonly DecisionState[] = ['settled', 'open', 'severe', 'refused', 'referred', 'none', 'left'];

export const stateHelp: readonly (HelpLine & { readonly state: DecisionState })[] = order.map((state) => ({
  state,
  name: stateWords[state].word,
  says: stateWords[state].means,
}));

export const factHelp: readonly HelpLine[] = [
  { name: 'Known', says: 'someone saw or measured it.' },
  {
    name: 'Assumed',
    says: 'it stands in until someone confirms it; its source is shown beside it.',
  },
  { name: '?', says: 'not surveyed. It counts as unknown, never as no.' },
  { name: 'Secure side', says: 'where the credential is read.' },
  { name: 'Egress side', says: 'where people leave from.' },
  {
    name: 'Fail safe, fail secure',
    says: 'unlocked or locked from the secure side when lock power is lost. Egress is judged separately.',
  },
  { name: 'Release', says: 'how a person who leaves unlocks the opening.' },
];

import { type Book, type CodeBasis, defaultBasis } from '../codes/basis.ts';
import type { Cite } from '../codes/sections.ts';
import type { CandidateMatch } from '../devices/candidates.ts';
import type { ItemId, Trade } from '../devices/items.ts';
import type { Condition } from '../logic/condition.ts';
import type { PlanSays } from '../logic/planKeys.ts';
import type { VerdictWord } from '../logic/verdict.ts';
import type { FactKey, FactValues } from '../model/fields.ts';

export type Confidence = 'read' | 'secondary' | 'memory' | 'inferred' | 'practice' | 'project';
export type Grade = 'must' | 'should' | 'note';

export const families = {
  foundations: 'Foundations of egress',
  magnets: 'Magnets and electric bolts',
  fire: 'Fire-rated openings',
  stairs: 'Stairs, roofs, discharge',
  panic: 'Panic hardware',
  special: 'Delayed, controlled, elevator lobby',
  rooms: 'Room types and uses',
  alarm: 'Fire alarm, power, commissioning',
  health: 'Health care, paths and stairs',
  doors: 'Special doors, gates, barriers',
  uses: 'Further rooms and uses',
  access: 'Access, operators, upkeep, framework',
  fit: 'Fit to door, frame and latch',
  traps: 'Traps of the trade',
  needs: 'What the owner asked for',
  contradictions: 'Contradictions in the survey',
} as const;
export type Family = keyof typeof families;

/**
 * What a clause does when its condition holds. `of` narrows it to some candidates; without it the clause
 * speaks of the opening, whatever is chosen.
 */
export type Effect =
  /** These candidates may not be used here. */
  | { readonly effect: 'prohibit' }
  /** These parts or conditions come with the candidate. */
  | { readonly effect: 'require'; readonly items: readonly ItemId[] }
  /** The opening must be worked on first, by this trade. */
  | { readonly effect: 'modify'; readonly trade: Trade }
  /** A named reviewer decides. */
  | { readonly effect: 'signOff'; readonly grade: Grade }
  | { readonly effect: 'caution' }
  /** Says plainly that something often refused is allowed, or that nothing need be added. */
  | { readonly effect: 'permit' }
  /** No automatic recommendation: the opening goes to a reviewer as it stands. */
  | { readonly effect: 'refer' }
  /** Something is wrong or contradictory in the survey, at this field. */
  | { readonly effect: 'finding'; readonly field: FactKey; readonly severity: 'refuse' | 'warn' };

export type Clause = Effect & {
  /** Letter of the clause within its rule, when there is more than one. */
  readonly key?: string;
  readonly when: Condition;
  readonly of?: CandidateMatch;
  /** One plain sentence for a person; `{fireRatingMin}` is replaced by the fact with its unit. */
  readonly says: string;
};

/**
 * What a clause does, as a case writes it down a second time: the parts asked for, or the effect with what it names.
 * Without it a part that is dropped or swapped, a softer grade or another field would pass every case.
 */
export type Does =
  | readonly ItemId[]
  | 'prohibit'
  | 'caution'
  | 'permit'
  | 'refer'
  | `modify ${Trade}`
  | `signOff ${Grade}`
  | `${'refuse' | 'warn'} ${FactKey}`;

export interface RuleCase {
  /** A short sentence: what stands at the door. */
  readonly name: string;
  readonly facts: FactValues & PlanSays;
  readonly expect: VerdictWord;
  /** Clause meant; may be left out when the rule has only one. */
  readonly clause?: string;
  /** Candidate asked about; the answer is "no" when the clause does not speak of it. */
  readonly on?: string;
  readonly basis?: Partial<CodeBasis>;
  /** What the clause then does; one case of each clause at least that expects yes says so. */
  readonly does?: Does;
}

/** What it is tested by stands in the file of its cases beside it, which a program that only decides never loads. */
export interface Rule {
  readonly id: string;
  readonly title: string;
  readonly family: Family;
  readonly book: Book;
  readonly cites: readonly Cite[];
  readonly confidence: Confidence;
  /** Where part of it rests on something weaker or was corrected; shown beside the confidence. */
  readonly note?: string;
  /** Why the rule exists, one plain sentence in our own words. */
  readonly why: string;
  readonly clauses: readonly [Clause, ...Clause[]];
}

export function defineRule(rule: Rule): Rule {
  return rule;
}

type CaseOptions = Omit<RuleCase, 'name' | 'facts' | 'expect'>;
/** `[what stands at the door, facts, expected answer, options]`; facts left out are unknown. */
export type CaseRow = readonly [string, FactValues & PlanSays, VerdictWord, CaseOptions?];

export function cases(...rows: readonly CaseRow[]): readonly RuleCase[] {
  return rows.map(([name, facts, expect, options]) => ({ name, facts, expect, ...options }));
}

/** The basis a case is judged under: the default, with NFPA 101 off, unless the case says otherwise. */
export function caseBasis(patch: Partial<CodeBasis> | undefined): CodeBasis {
  return { ...defaultBasis, ...patch };
}

/** The rule was not read in the code's own text. */
export function isSecondHand({ confidence }: Pick<Rule, 'confidence'>): boolean {
  return confidence === 'secondary' || confidence === 'memory' || confidence === 'inferred';
}

const confidenceWords: Record<Confidence, string> = {
  read: 'read in the code’s text or a quotation of it',
  secondary: 'read second-hand, not in the code’s text',
  memory: 'from general knowledge, not read in the code’s text',
  inferred: 'worked out from figures that were read, not read itself',
  practice: 'common practice, no source',
  project: 'policy of this schedule, not a code text',
};
export function confidenceInWords(confidence: Confidence): string {
  return confidenceWords[confidence];
}

import { books, type CodeBasis } from '../codes/basis.ts';
import { type Cite, citeInWords, sectionInWords, withBook } from '../codes/sections.ts';
import { candidateById, releases } from '../devices/candidates.ts';
import { type Item, items, trades } from '../devices/items.ts';
import { valueInWords } from '../text/format.ts';
import { midSentence, startSentence } from '../text/midSentence.ts';
import type { VerdictWord } from '../logic/verdict.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';
import { candidatesInWords } from './candidatesInWords.ts';
import { type ConditionWords, conditionInWords, conditionLine, nameOf } from './conditionInWords.ts';
import {
  type Clause,
  confidenceInWords,
  families,
  type Family,
  type Rule,
  type RuleCase,
} from '../rules/rule.ts';

/** The rule book for a person, as data. The page and the printed manual lay out the same entries. */
export interface ManualEntry {
  readonly id: string;
  readonly title: string;
  readonly family: Family;
  readonly book: string;
  readonly cites: readonly string[];
  readonly confidence: string;
  /** Nobody of ours read it in the code's own text; the reader must be told so plainly. */
  readonly notRead: boolean;
  readonly note: string | undefined;
  readonly why: string;
  readonly clauses: readonly ManualClause[];
}
export interface ManualClause {
  readonly key: string;
  readonly effect: string;
  /** What the effect names: parts, trade, grade or field. */
  readonly names: readonly string[];
  readonly when: ConditionWords;
  readonly of: string;
  readonly says: string;
}
export interface ManualCase {
  readonly name: string;
  readonly stands: readonly string[];
  readonly clause: string;
  readonly on: string;
  readonly under: string;
  readonly answer: string;
}

/** With a basis as the project cites it; without one, with the sections of every edition. */
export function manualEntry(rule: Rule, basis: CodeBasis | null): ManualEntry {
  return {
    id: rule.id,
    title: rule.title,
    family: rule.family,
    book: books[rule.book],
    cites: rule.cites.map((cite) => (basis === null ? citeOfAllEditions(cite) : citeInWords(cite, basis))),
    confidence: startSentence(confidenceInWords(rule.confidence)),
    notRead: ['secondary', 'memory', 'inferred'].includes(rule.confidence),
    note: rule.note,
    why: rule.why,
    clauses: rule.clauses.map((clause) => manualClause(clause, basis)),
  };
}

export interface ManualFamily {
  readonly family: Family;
  readonly name: string;
  readonly rules: readonly Rule[];
}

/** Families in the order of the book; a family without a rule is left out. */
export function byFamily(rules: readonly Rule[]): readonly ManualFamily[] {
  return (Object.keys(families) as Family[]).flatMap((family) => {
    const own = rules.filter((rule) => rule.family === family);
    return own.length === 0 ? [] : [{ family, name: families[family], rules: own }];
  });
}

/** What a search looks through: id, title, sentences, reason, sections. */
export function searchText(entry: ManualEntry): string {
  return [
    entry.id,
    entry.title,
    entry.book,
    entry.why,
    entry.note ?? '',
    ...entry.cites,
    ...entry.clauses.flatMap((clause) => [clause.effect, clause.says, clause.of, conditionLine(clause.when)]),
  ]
    .join('\n')
    .toLowerCase();
}

/** Every word must be found; "R-3" finds R-31 as well, so that typing narrows step by step. */
export function isFound(text: string, wanted: string): boolean {
  return wanted
    .toLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

const effectWords: Record<Clause['effect'], string> = {
  prohibit: 'Prohibits',
  require: 'Requires',
  modify: 'Asks for work first',
  signOff: 'Needs sign-off',
  caution: 'Cautions',
  permit: 'Permits',
  refer: 'Goes to a reviewer undecided',
  finding: 'Finds a contradiction',
};

function manualClause(clause: Clause, basis: CodeBasis | null): ManualClause {
  return {
    key: clause.key ?? '',
    effect: effectWords[clause.effect],
    names: namesOf(clause),
    when: conditionInWords(clause.when, basis),
    of: candidatesInWords(clause.of),
    says: clause.says.replace(/\{(\w+)\}/g, (_whole, name: string) =>
      isFactKey(name) ? `[${nameOf(name)}]` : name,
    ),
  };
}

function namesOf(clause: Clause): readonly string[] {
  switch (clause.effect) {
    case 'require':
      return clause.items.map((id) => {
        const item: Item = items[id];
        return item.standard ? `${item.name} (${item.standard})` : item.name;
      });
    case 'modify':
      return [`By: ${midSentence(trades[clause.trade])}`];
    case 'signOff':
      return [
        {
          must: 'Must be signed before issue',
          should: 'Should be looked at',
          note: 'For the record',
        }[clause.grade],
      ];
    case 'finding':
      return [
        `At the question: ${fieldInfo(clause.field).label}`,
        clause.severity === 'refuse' ? 'No decision until it is corrected' : 'A warning',
      ];
    case 'prohibit':
    case 'caution':
    case 'permit':
    case 'refer':
      return [];
  }
}

const answerWords: Record<VerdictWord, string> = {
  yes: 'applies',
  no: 'does not apply',
  unknown: 'cannot tell yet',
};
export function answerInWords(verdict: VerdictWord): string {
  return answerWords[verdict];
}

export function manualCase(one: RuleCase): ManualCase {
  const on = arrangement(one.on);
  return {
    name: caseName(one, on),
    stands: Object.entries(one.facts).flatMap(([key, value]) =>
      isFactKey(key) ? [`${fieldInfo(key).label}: ${valueInWords(key, value)}`] : [],
    ),
    clause: one.clause ?? '',
    on,
    under: Object.entries((one.basis ?? {}) as Readonly<Record<string, number | null>>)
      .map(([book, year]) => `${books[book as keyof typeof books]} ${year ?? 'not adopted'}`)
      .join(', '),
    answer: answerInWords(one.expect),
  };
}

function arrangement(id: string | undefined): string {
  const found = id === undefined ? undefined : candidateById(id);
  if (!found) return '';
  const mode = { safe: ', fail safe', secure: ', fail secure', asIs: '', none: '' }[found.failMode];
  return `${found.device.name}${mode}; ${midSentence(releases[found.release])}`;
}

/** Cases asked of several arrangements carry the id of each in their name; a person reads its words. */
function caseName(one: RuleCase, on: string): string {
  if (one.on === undefined) return one.name;
  const tail = `, ${one.on}`;
  return one.name.endsWith(tail) ? one.name.slice(0, -tail.length) : one.name.replace(one.on, on);
}

/** "IBC 1010.1.9 (2018), 1010.2 (2021, 2024): Operation of egress doors" */
function citeOfAllEditions(cite: Cite): string {
  const what = cite.what ? `: ${cite.what}` : '';
  const { any } = cite.sections;
  if (typeof any === 'string') return `${withBook(cite.book, any)}${what}`;
  const years = new Map<string, string[]>();
  for (const [year, section] of Object.entries(cite.sections)) {
    const key = sectionInWords(section);
    years.set(key, [...(years.get(key) ?? []), year]);
  }
  const list = [...years].map(([section, of]) => `${section} (${of.join(', ')})`).join(', ');
  return `${books[cite.book]} ${list}${what}`;
}

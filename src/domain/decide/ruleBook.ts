import { arrangedItems } from '../arrangement/arrange.ts';
import { type CodeBasis, basisKey } from '../codes/basis.ts';
import { fitClause, fitRule, ratedFitClause, ratedFitRule } from '../rules/fitRules.ts';
import { type FitRow, fitCell, fitRows } from '../fit/matrix.ts';
import { candidates } from '../devices/candidates.ts';
import { compile, type Test } from '../logic/compile.ts';
import { slotOf } from '../logic/slots.ts';
import { type Condition, factsRead } from '../logic/condition.ts';
import { derivedDefinition } from '../logic/derived.ts';
import { derivedKeys } from '../logic/derivedKeys.ts';
import { factOfPlanKey, planKeys } from '../logic/planKeys.ts';
import { factKeys, type FactKey, isFactKey } from '../model/fields.ts';
import type { Amendment } from '../model/project.ts';
import { allRules } from '../rules/all.ts';
import { amendmentRule } from '../rules/amendments.ts';
import type { Clause, Rule } from '../rules/rule.ts';
import { type CandidateSet, has, setMatching, setOf } from './candidateSet.ts';
import { addClause, type ClauseIndex, type ClauseSet, emptyClauseSet } from './clauseIndex.ts';
import { indexClauses } from './indexClauses.ts';

/** One clause made ready for a code basis. `yes` and `unknown` are the two steps it can leave in a decision. */
export interface ReadyClause {
  readonly rule: Rule;
  readonly clause: Clause;
  readonly test: Test;
  readonly speaksOf: CandidateSet;
  readonly reads: FactSet;
  /** Parts it asks for that an arrangement is made of, as bits over `arrangedItems`. */
  readonly brings: number;
  readonly yes: Step;
  readonly unknown: Step;
}

/** A rule that had something to say, and whether it is sure. The explanation is made of these. */
export interface Step {
  readonly rule: Rule;
  readonly clause: Clause;
  readonly sure: boolean;
  readonly ready: ReadyClause;
}

export interface ReadyRow {
  readonly row: FitRow;
  readonly test: Test;
  readonly reads: FactSet;
  /** Candidates whose device can not go in here. */
  readonly impossible: CandidateSet;
  /** Candidates that are not a usual pairing, or only as a listing allows: a person must ask. */
  readonly doubtful: CandidateSet;
  readonly step: Step;
  readonly unsureStep: Step;
}

export interface RuleBook {
  readonly basis: CodeBasis;
  /** All clauses in the order of the rules; a clause set is bits over this list. */
  readonly clauses: readonly ReadyClause[];
  readonly index: ClauseIndex;
  readonly sets: {
    readonly prohibits: ClauseSet;
    /** Clauses that speak of the opening, whatever is chosen. */
    readonly aboutOpening: ClauseSet;
    /** Clauses that speak of some candidates, by candidate index. */
    readonly aboutCandidate: readonly ClauseSet[];
    /** What is asked of every lock that a person opens by hand: due whichever comes, so also where none is left. */
    readonly aboutEveryLock: ClauseSet;
  };
  readonly rows: readonly ReadyRow[];
  readonly rowIndex: ClauseIndex;
  /** Why a device without a label is off a rated door, whatever the row. */
  readonly ratedStep: Step;
}

const ordinaryLocks = candidates.filter(
  ({ release, device: { family } }) =>
    release === 'free' && ['mechanical', 'lock', 'exitDevice', 'strike'].includes(family),
);

/** Facts as bits over `factKeys`, derived facts traced back to the surveyed ones they come from. */
export type FactSet = Uint32Array;
export const factWords = Math.ceil(factKeys.length / 32);

const surveyedBehind = new Map<string, readonly FactKey[]>(
  planKeys.map((key) => [key, [factOfPlanKey[key]]]),
);
for (const key of derivedKeys) {
  const behind = new Set<FactKey>();
  for (const read of factsRead(derivedDefinition(key))) {
    if (isFactKey(read)) behind.add(read);
    else for (const deeper of surveyedBehind.get(read) ?? []) behind.add(deeper);
  }
  surveyedBehind.set(key, [...behind]);
}

export function surveyedFacts(condition: Condition): readonly FactKey[] {
  const found = new Set<FactKey>();
  for (const read of factsRead(condition)) {
    if (isFactKey(read)) found.add(read);
    else for (const key of surveyedBehind.get(read) ?? []) found.add(key);
  }
  return [...found];
}

function factSet(keys: readonly FactKey[]): FactSet {
  const set = new Uint32Array(factWords);
  for (const key of keys) {
    const index = slotOf(key);
    set[index >>> 5] = (set[index >>> 5] as number) | (1 << (index & 31));
  }
  return set;
}

export function factsIn(set: FactSet): FactKey[] {
  return factKeys.filter((_key, index) => ((set[index >>> 5] as number) & (1 << (index & 31))) !== 0);
}

const itemPlaces = new Map<string, number>(arrangedItems.map((item, place) => [item, place]));
function itemBits(items: readonly string[]): number {
  return items.reduce((bits, item) => {
    const place = itemPlaces.get(item);
    return place === undefined ? bits : bits | (1 << place);
  }, 0);
}

function readyClause(rule: Rule, clause: Clause, basis: CodeBasis): ReadyClause {
  const ready: { -readonly [K in keyof ReadyClause]: ReadyClause[K] } = {
    rule,
    clause,
    test: compile(clause.when, basis, rule.id),
    speaksOf: setMatching(clause.of),
    reads: factSet(surveyedFacts(clause.when)),
    brings: clause.effect === 'require' ? itemBits(clause.items) : 0,
    yes: undefined as unknown as Step,
    unknown: undefined as unknown as Step,
  };
  ready.yes = { rule, clause, sure: true, ready };
  ready.unknown = { rule, clause, sure: false, ready };
  return ready;
}

function readyRow(row: FitRow, basis: CodeBasis): ReadyRow {
  const fits = readyClause(fitRule(row), fitClause(row), basis);
  return {
    row,
    test: fits.test,
    reads: fits.reads,
    impossible: setOf((candidate) => fitCell(row, candidate.deviceId).verdict === 'no'),
    doubtful: setOf((candidate) => ['ask', 'list'].includes(fitCell(row, candidate.deviceId).verdict)),
    step: fits.yes,
    unsureStep: fits.unknown,
  };
}

export function makeRuleBook(basis: CodeBasis, rules: readonly Rule[]): RuleBook {
  return {
    ...ofClauses(readyClauses(rules, basis), basis),
    rows: fitRows.map((row) => readyRow(row, basis)),
    rowIndex: indexClauses(
      fitRows.map((row) => row.when),
      basis,
    ),
    ratedStep: readyClause(ratedFitRule, ratedFitClause, basis).yes,
  };
}

/** The same book with a few rules more; what is ready stays. */
function withMoreRules(book: RuleBook, rules: readonly Rule[]): RuleBook {
  return { ...book, ...ofClauses([...book.clauses, ...readyClauses(rules, book.basis)], book.basis) };
}

function readyClauses(rules: readonly Rule[], basis: CodeBasis): ReadyClause[] {
  return rules.flatMap((rule) => rule.clauses.map((clause) => readyClause(rule, clause, basis)));
}

function ofClauses(
  clauses: readonly ReadyClause[],
  basis: CodeBasis,
): Pick<RuleBook, 'basis' | 'clauses' | 'index' | 'sets'> {
  const prohibits = emptyClauseSet(clauses.length);
  const aboutOpening = emptyClauseSet(clauses.length);
  const aboutCandidate = candidates.map(() => emptyClauseSet(clauses.length));
  clauses.forEach(({ clause, speaksOf }, at) => {
    if (clause.effect === 'prohibit') addClause(prohibits, at);
    else if (clause.of === undefined) addClause(aboutOpening, at);
    else aboutCandidate.forEach((set, index) => has(speaksOf, index) && addClause(set, at));
  });
  const index = indexClauses(
    clauses.map(({ clause }) => clause.when),
    basis,
  );
  const aboutEveryLock = emptyClauseSet(clauses.length);
  clauses.forEach(({ clause, speaksOf }, at) => {
    const asks = (clause.effect === 'require' || clause.effect === 'modify') && clause.of !== undefined;
    if (asks && ordinaryLocks.every(({ index: one }) => has(speaksOf, one))) addClause(aboutEveryLock, at);
  });
  return { basis, clauses, index, sets: { prohibits, aboutOpening, aboutCandidate, aboutEveryLock } };
}

const booksByKey = new Map<string, RuleBook>();
/** The same by object, because a project keeps its basis and a key costs time at every opening. */
const booksByBasis = new WeakMap<CodeBasis, RuleBook>();
const booksByAmendments = new WeakMap<readonly Amendment[], Map<string, RuleBook>>();

/** The rule book of a project: all rules under its basis, and its own amendments. Made once, then remembered. */
export function ruleBookFor(basis: CodeBasis, amendments: readonly Amendment[]): RuleBook {
  if (amendments.length === 0) {
    const before = booksByBasis.get(basis);
    if (before) return before;
    const key = basisKey(basis);
    const book = booksByKey.get(key) ?? makeRuleBook(basis, allRules);
    booksByKey.set(key, book);
    booksByBasis.set(basis, book);
    return book;
  }
  const key = basisKey(basis);
  let byBasis = booksByAmendments.get(amendments);
  if (!byBasis) {
    byBasis = new Map();
    booksByAmendments.set(amendments, byBasis);
  }
  let book = byBasis.get(key);
  if (!book) {
    book = withMoreRules(ruleBookFor(basis, []), amendments.map(amendmentRule));
    byBasis.set(key, book);
  }
  return book;
}

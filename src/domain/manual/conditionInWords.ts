import { books, type CodeBasis } from '../codes/basis.ts';
import { entriesOf, type Limit, type LimitId, limits } from '../codes/limits.ts';
import type { Bound, Comparison, Condition, EditionBook, Readable } from '../logic/condition.ts';
import type { DerivedKey } from '../logic/derivedKeys.ts';
import type { PlanKey } from '../logic/planKeys.ts';
import { valueInSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { fieldInfo, isFactKey } from '../model/fields.ts';

/** A condition as a person reads it: one phrase, or a list with a word at its head. */
export type ConditionWords =
  | { readonly kind: 'says'; readonly says: string }
  | { readonly kind: 'list'; readonly head: string; readonly of: readonly ConditionWords[] };

/** With a basis the figures are those of its editions; without one, those of every edition. */
export function conditionInWords(condition: Condition, basis: CodeBasis | null): ConditionWords {
  return words(condition, basis, false);
}

/** The same as one line of text, for tables, search and tests. */
export function conditionLine(said: ConditionWords): string {
  if (said.kind === 'says') return said.says;
  return `${said.head}: ${said.of.map((part) => (part.kind === 'list' ? `(${conditionLine(part)})` : part.says)).join('; ')}`;
}

const phrase = (says: string): ConditionWords => ({ kind: 'says', says });

function words(condition: Condition, basis: CodeBasis | null, denied: boolean): ConditionWords {
  switch (condition.op) {
    case 'always':
      return phrase(denied ? 'never' : 'always');
    case 'is':
      return phrase(isWords(condition.fact, condition.values, denied));
    case 'compare':
      return phrase(
        `${nameOf(condition.fact)} is ${comparison(condition.how, denied)} ${boundWords(condition.fact, condition.bound, basis)}`,
      );
    case 'known':
      return phrase(`${nameOf(condition.fact)} is ${denied ? 'not known' : 'known'}`);
    case 'edition':
      return phrase(editionWords(condition, denied));
    case 'not':
      return words(condition.of, basis, !denied);
    case 'all':
    case 'any':
      return listWords(condition, basis, denied);
  }
}

/** Lists inside a list of the same kind are one list; a list of one is its only part. */
function listWords(
  condition: Extract<Condition, { op: 'all' | 'any' }>,
  basis: CodeBasis | null,
  denied: boolean,
): ConditionWords {
  const parts = flat(condition.op, condition.of);
  const [only] = parts;
  if (only && parts.length === 1) return words(only, basis, denied);
  const heads = denied
    ? { all: 'not all of these together', any: 'none of these' }
    : { all: 'all of these', any: 'at least one of these' };
  return { kind: 'list', head: heads[condition.op], of: parts.map((part) => words(part, basis, false)) };
}

function flat(op: 'all' | 'any', parts: readonly Condition[]): readonly Condition[] {
  return parts.flatMap((part) => (part.op === op ? flat(op, part.of) : [part]));
}

/** Worked-out facts have no label of their own; each is a plain statement and its denial. */
const derivedWords: Record<DerivedKey | PlanKey, readonly [yes: string, no: string]> = {
  isEgress: ['people may leave through the door', 'no one leaves through the door'],
  fireRated: ['the door is, or by its wall must be, fire-rated', 'neither door nor wall is fire-rated'],
  isPair: ['the door has two leaves', 'the door has one leaf'],
  isSwinging: ['the door swings', 'the door does not swing'],
  isStairDoor: ['the door belongs to an exit stair', 'the door does not belong to an exit stair'],
  stairSideToLock: ['the stair side is to be locked', 'the stair side is not to be locked'],
  floorSideToLock: ['the floor side is to be locked', 'the floor side is not to be locked'],
  groupA: ['the occupancy is assembly (Group A)', 'the occupancy is not assembly (Group A)'],
  groupE: ['the occupancy is educational (Group E)', 'the occupancy is not educational (Group E)'],
  groupH: ['the occupancy is high hazard (Group H)', 'the occupancy is not high hazard (Group H)'],
  groupI: ['the occupancy is institutional (Group I)', 'the occupancy is not institutional (Group I)'],
  hasExitDevice: ['the door carries an exit device', 'the door carries no exit device'],
  panicWithLock: [
    'panic hardware is required as soon as there is a lock',
    'no rule would require panic hardware beside a lock',
  ],
  panicRequired: ['a rule requires panic hardware', 'no rule requires panic hardware'],
  fullSprinklers: [
    'a full (NFPA 13) sprinkler system throughout',
    'no full (NFPA 13) sprinkler system throughout',
  ],
  peopleOnLockedSide: [
    'people leave from the locked side as well',
    'no one has to leave from the locked side',
  ],
  wantsReader: ['a credential is to be read', 'no credential is to be read'],
  planOnlyDoor: ['the plan shows it as the only door of its room', 'the plan shows other doors of its room'],
  planLoadLarger: ['the plan gives a larger occupant load', 'the plan gives no larger occupant load'],
  planGroupStricter: ['the plan names a stricter group', 'the plan names no stricter group'],
  planHighHazardLeaves: [
    'people of a Group H room can leave only through here',
    'no people of a Group H room must leave through here',
  ],
  planAreaDiffers: ['the plan gives another area', 'the plan gives no other area'],
  planNoOtherDoor: ['the plan shows no other exit', 'the plan shows another exit'],
  planSpaceLoads: ['the space has one load as given and another by use and area', 'the space has one load'],
  planNoLobbyExit: ['the plan shows no other exit of the lobby', 'the plan shows another exit of the lobby'],
};

function isWords(fact: Readable, values: readonly (string | boolean)[], denied: boolean): string {
  const [first] = values;
  if (!isFactKey(fact)) {
    const [yes, no] = derivedWords[fact];
    return (first === true) !== denied ? yes : no;
  }
  if (values.length === 1 && typeof first === 'boolean') {
    return `${nameOf(fact)}: ${first !== denied ? 'yes' : 'no'}`;
  }
  const named = values.map((value) => valueInSentence(fact, value));
  return `${nameOf(fact)} is ${denied ? 'not ' : ''}${orList(named)}`;
}

export function orList(parts: readonly string[]): string {
  if (parts.length < 2) return parts.join('');
  const separator = parts.some((part) => part.includes(',')) ? '; ' : ', ';
  return `${parts.slice(0, -1).join(separator)} or ${parts.at(-1) ?? ''}`;
}

export function nameOf(fact: Readable): string {
  if (!isFactKey(fact)) return derivedWords[fact][0];
  return midSentence(fieldInfo(fact).label);
}

const said: Record<Comparison, readonly [plain: string, denied: string]> = {
  atLeast: ['at least', 'under'],
  over: ['over', 'at most'],
  atMost: ['at most', 'over'],
  under: ['under', 'at least'],
};
function comparison(how: Comparison, denied: boolean): string {
  return said[how][denied ? 1 : 0];
}

function boundWords(fact: Readable, bound: Bound, basis: CodeBasis | null): string {
  if (typeof bound === 'number') return isFactKey(fact) ? valueInSentence(fact, bound) : String(bound);
  return limitWords(bound, basis);
}

/** "50 people (IBC 2021: 50)", or the figures of all editions, said once where they agree. */
function limitWords(id: LimitId, basis: CodeBasis | null): string {
  const limit: Limit = limits[id];
  const book = books[limit.book];
  const withUnit = (value: number) => `${value} ${limit.unit}`;
  const editions = entriesOf(id);
  const { any } = editions;
  if (any) return `${withUnit(any.value)} (${any.section ? `${book} ${any.section}` : book})`;
  const adopted =
    basis === null ? null : ((basis as Readonly<Record<string, number | null>>)[limit.book] ?? null);
  const entry = editions[String(adopted)];
  if (entry) return `${withUnit(entry.value)} (${book} ${String(adopted)}: ${entry.value})`;
  const entries = Object.entries(editions);
  if (basis !== null) {
    const [year, newest] = entries.at(-1) ?? ['', undefined];
    return `${newest ? withUnit(newest.value) : 'a figure'} (${book} ${year}, not adopted here)`;
  }
  const values = new Set(entries.map(([, one]) => one.value));
  if (values.size === 1) {
    const [value = 0] = values;
    return `${withUnit(value)} (${book} ${entries.map(([year]) => year).join(', ')})`;
  }
  return `the figure of the edition (${book} ${entries.map(([year, one]) => `${year}: ${withUnit(one.value)}`).join(', ')})`;
}

function editionWords(
  { book, from, to }: { book: EditionBook; from?: number; to?: number },
  denied: boolean,
): string {
  const range =
    from !== undefined && to !== undefined
      ? from === to
        ? ` ${from}`
        : ` ${from} to ${to}`
      : from !== undefined
        ? ` ${from} or later`
        : to !== undefined
          ? ` ${to} or earlier`
          : '';
  return `${books[book]}${range} is ${denied ? 'not adopted' : 'adopted'}`;
}

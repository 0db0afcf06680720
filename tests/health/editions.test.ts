// An edition that is added must be read: sections and limits fail to compile until each has its entry, and what is
// written for “this edition and later” fails here, by rule and clause, until somebody read the new text.
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inRoot } from '../../scripts/lib/repo.mjs';
import { ibcEditions, necEditions, nfpa101Editions, nfpa72Editions } from '../../src/domain/codes/basis.ts';
import { entriesOf, type LimitId, limits } from '../../src/domain/codes/limits.ts';
import { type Cite, sections } from '../../src/domain/codes/sections.ts';
import type { Condition, EditionBook } from '../../src/domain/logic/condition.ts';
import { derivedDefinition } from '../../src/domain/logic/derived.ts';
import { derivedKeys } from '../../src/domain/logic/derivedKeys.ts';
import { allRules } from '../../src/domain/rules/all.ts';

const editionsOf: Readonly<Record<EditionBook, readonly number[]>> = {
  ibc: ibcEditions,
  nfpa101: nfpa101Editions,
  nec: necEditions,
  nfpa72: nfpa72Editions,
};
type Editions = typeof editionsOf;
const isEditionBook = (book: string): book is EditionBook => Object.hasOwn(editionsOf, book);

type Range = Extract<Condition, { op: 'edition' }>;
function rangesIn(condition: Condition): readonly Range[] {
  switch (condition.op) {
    case 'edition':
      return [condition];
    case 'not':
      return rangesIn(condition.of);
    case 'all':
    case 'any':
      return condition.of.flatMap(rangesIn);
    default:
      return [];
  }
}

/** Where a text is taken to hold in an edition that nobody read it in. */
function unread(editions: Editions): readonly string[] {
  const places: readonly (readonly [string, Condition])[] = [
    ...allRules.flatMap((rule) =>
      rule.clauses.map((clause) => [`${rule.id}${clause.key ?? ''}`, clause.when] as const),
    ),
    ...derivedKeys.map((key) => [`derived fact ${key}`, derivedDefinition(key)] as const),
  ];
  return places.flatMap(([place, condition]) =>
    rangesIn(condition).flatMap(({ book, from, to, readTo }) => {
      const newest = Math.max(...editions[book]);
      return from !== undefined && to === undefined && readTo !== newest
        ? [`${place}: ${book} from ${from} was read up to ${readTo}, not in ${newest}`]
        : [];
    }),
  );
}

/** Sections and limits without an entry for an edition of their book. */
function missing(editions: Editions): readonly string[] {
  const holes = (name: string, book: string, of: Readonly<Record<string, unknown>>) =>
    isEditionBook(book) && !Object.hasOwn(of, 'any')
      ? editions[book].filter((year) => !Object.hasOwn(of, year)).map((year) => `${name}: ${book} ${year}`)
      : [];
  return [
    ...Object.entries<Cite>(sections).flatMap(([topic, cite]) => holes(topic, cite.book, cite.sections)),
    ...(Object.keys(limits) as LimitId[]).flatMap((id) => holes(id, limits[id].book, entriesOf(id))),
  ];
}

describe('editions', () => {
  test('every section and limit has an entry, every open range says up to which edition it was read', () => {
    expect([...missing(editionsOf), ...unread(editionsOf)]).toEqual([]);
  });

  test('an edition tried out names each hole', () => {
    const next = Math.max(...ibcEditions) + 3;
    const tried = { ...editionsOf, ibc: [...ibcEditions, next] };
    const ibcTopics = Object.values<Cite>(sections).filter((cite) => cite.book === 'ibc');
    const ibcLimits = Object.values(limits).filter((limit) => limit.book === 'ibc');
    expect(missing(tried)).toHaveLength(ibcTopics.length + ibcLimits.length);
    expect(unread(tried).length).toBeGreaterThan(20);
    expect(unread(tried).every((one) => one.endsWith(`not in ${next}`))).toBe(true);
  });

  test('no code asks by hand whether an edition is new enough: it would answer for editions nobody read', () => {
    const files = (readdirSync(inRoot('src'), { recursive: true }) as string[]).filter((name) =>
      /\.tsx?$/.test(name),
    );
    const byHand = files.filter((name) =>
      /\b(ibc|nfpa101|nec|nfpa72|edition)\b[^\n;]{0,20}(>=|<=|[<>])\s*20\d\d/.test(
        readFileSync(inRoot('src', name), 'utf8'),
      ),
    );
    expect(files.length).toBeGreaterThan(300);
    expect(byHand).toEqual([]);
  });

  test('every value has the day on which somebody last checked it', () => {
    for (const id of Object.keys(limits) as LimitId[]) {
      for (const [year, { checkedOn }] of Object.entries(entriesOf(id))) {
        expect([id, year, checkedOn]).toEqual([id, year, expect.stringMatching(/^20\d\d-[01]\d-[0-3]\d$/)]);
      }
    }
  });
});

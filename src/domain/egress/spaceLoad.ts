import type { CodeBasis } from '../codes/basis.ts';
import type { Space } from '../model/project.ts';
import type { Use } from '../model/uses.ts';
import { type Qty, qty } from '../units/quantity.ts';
import { nfpaOfUse } from './nfpaOfUse.ts';
import { nfpaUseFactors, type UseFactor, useFactors } from './occupantFactors.ts';
import { occupantLoad, occupantLoadNfpa } from './occupantLoad.ts';
import { figure, peopleInWords, type Reason, resting, surveyed } from './reason.ts';

type Part = Pick<Space, 'occupantLoad' | 'use' | 'areaFt2' | 'useFrom' | 'occupantLoadFrom'>;

/** What one adopted code makes of use and area. `notAsked`: it sets no load for such a use. */
export interface CodeLoad {
  readonly book: 'IBC' | 'NFPA 101';
  readonly is: 'known' | 'notAsked' | 'unknown';
  /** Nothing unless known. */
  readonly people: number | null;
  readonly reason: Reason;
}

export interface SpaceLoad {
  /** What somebody gave. */
  readonly typed: number | null;
  readonly byCode: readonly CodeLoad[];
  /** Worked out from use and area, the larger of the adopted codes; null while one of them cannot be said. */
  readonly computed: number | null;
  /** The load that counts, the larger of the two; null is unknown. */
  readonly people: number | null;
  /** What counts and why, in one sentence. */
  readonly says: string;
  readonly reasons: readonly Reason[];
  /** What would have to be known, in words. */
  readonly missing: readonly string[];
}

/** The load that was given is not what use and area come to. */
export function loadsDiffer({ typed, computed }: Pick<SpaceLoad, 'typed' | 'computed'>): boolean {
  return typed !== null && computed !== null && typed !== computed;
}

const remembered = new WeakMap<Part, { readonly basis: CodeBasis; readonly load: SpaceLoad }>();

/** Remembered by space: thousands of doors ask for the load of the room behind them. */
export function loadOf(space: Part, basis: CodeBasis): SpaceLoad {
  const before = remembered.get(space);
  if (before?.basis === basis) return before.load;
  const load = workOut(space, basis);
  remembered.set(space, { basis, load });
  return load;
}

/** People in a space: the larger of what was given and what use and area come to; null is unknown. */
export function peopleIn(space: Part, basis: CodeBasis): number | null {
  if (space.use === null || space.areaFt2 === null) return space.occupantLoad;
  return loadOf(space, basis).people;
}

function workOut(space: Part, basis: CodeBasis): SpaceLoad {
  const typed = space.occupantLoad;
  const missing = [
    ...(space.use === null ? ['what the floor is used for'] : []),
    ...(space.areaFt2 === null ? ['the floor area'] : []),
    ...(basis.ibc === null && basis.nfpa101 === null ? ['an adopted building code'] : []),
  ];
  const byCode =
    space.use === null || space.areaFt2 === null
      ? []
      : [
          ...(basis.ibc === null ? [] : [byIbc(space.use, qty(space.areaFt2, 'ft²'), basis.ibc)]),
          ...(basis.nfpa101 === null ? [] : [byNfpa(space.use, qty(space.areaFt2, 'ft²'), basis.nfpa101)]),
        ];
  const known = byCode.flatMap((one) => one.people ?? []);
  const computed =
    known.length === 0 || byCode.some((one) => one.is === 'unknown') ? null : Math.max(...known);
  const people = typed === null || computed === null ? (typed ?? computed) : Math.max(typed, computed);
  return {
    typed,
    byCode,
    computed,
    people,
    says: inWords(typed, computed, byCode, missing),
    reasons: [
      ...originsOf(space).map(surveyed),
      ...byCode.map((one) => one.reason),
      ...(known.length > 1 ? [surveyed('Both codes are adopted, so the larger load counts.')] : []),
      ...(typed !== null && computed !== null && typed < computed ? [smallerNeedsApproval] : []),
    ],
    missing,
  };
}

/** Where use and load come from when no person entered them; one sentence each. */
export function originsOf({ useFrom, occupantLoadFrom }: Part): readonly string[] {
  return [
    ...(useFrom === undefined ? [] : [`The use was read from the ${useFrom}.`]),
    ...(occupantLoadFrom === undefined ? [] : [`The load was taken from the ${occupantLoadFrom}.`]),
  ];
}

const smallerNeedsApproval = resting(
  'A load below the one worked out needs the approval of the building official.',
  'IBC 1004.5, exception',
  'memory',
);

function inWords(
  typed: number | null,
  computed: number | null,
  byCode: readonly CodeLoad[],
  missing: readonly string[],
): string {
  if (typed !== null) {
    if (computed === null) return `${peopleInWords(typed)}, as given.`;
    return typed === computed
      ? `${peopleInWords(typed)}, as given; use and area come to the same.`
      : `${peopleInWords(Math.max(typed, computed))}, the larger of ${figure(typed)} as given and ${figure(computed)} by use and area. Correct the one that is wrong.`;
  }
  if (computed !== null) return `${peopleInWords(computed)}, worked out from use and area.`;
  if (missing.length > 0)
    return `Not known: ${missing.join(' and ')} ${missing.length > 1 ? 'are' : 'is'} missing.`;
  const open = byCode.find((one) => one.is === 'unknown') ?? byCode[0];
  return `Not known: ${open?.reason.says ?? 'nothing is stated.'}`;
}

function byIbc(use: Use, area: Qty<'ft²'>, edition: 2018 | 2021 | 2024): CodeLoad {
  const book = 'IBC';
  const source = `IBC ${edition} Table 1004.5`;
  const found = occupantLoad(use, area, edition);
  if (!found.ok)
    return { book, is: 'unknown', people: null, reason: surveyed(`IBC ${edition}: ${found.says}`) };
  const { people, ft2PerPerson, measure, confidence } = found;
  const says = `IBC ${edition}: ${division(use, area, ft2PerPerson, measure, people)}`;
  return { book, is: 'known', people, reason: resting(says, source, confidence) };
}

function byNfpa(use: Use, area: Qty<'ft²'>, edition: number): CodeLoad {
  const book = 'NFPA 101';
  const source = `NFPA 101 ${edition} Table 7.3.1.2`;
  const row = nfpaOfUse[use];
  if ('ask' in row) {
    return { book, is: 'unknown', people: null, reason: surveyed(`NFPA 101 ${edition}: ${row.ask}.`) };
  }
  const found = 'same' in row ? occupantLoad(use, area, sameAs) : occupantLoadNfpa(row.factor, area);
  if (!found.ok) {
    return { book, is: 'notAsked', people: null, reason: resting(found.says, source, 'memory') };
  }
  const { measure, editions }: UseFactor = useFactors[use];
  const factor = 'same' in row ? editions[sameAs]?.ft2 : nfpaUseFactors[row.factor];
  const says = `NFPA 101 ${edition}: ${division(use, area, factor ?? 0, measure, found.people)}`;
  return { book, is: 'known', people: found.people, reason: resting(says, source, 'memory') };
}

/** Every use is listed in the newest table. */
const sameAs = 2024;

const measures = { net: 'net floor', gross: 'gross floor, inside the walls' } as const;

function division(use: Use, area: number, factor: number, measure: 'net' | 'gross', people: number): string {
  return `${figure(area)} ft² ÷ ${factor} ft² a person (${useFactors[use].name}, ${measures[measure]}) = ${peopleInWords(people)}.`;
}

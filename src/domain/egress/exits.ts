import type { FactValue } from '../model/fields.ts';
import type { Qty } from '../units/quantity.ts';

type Group = FactValue<'occupancyGroup'>;

/**
 * Exits a space or story needs by load alone once one is not enough: 1–500 two, 501–1,000 three, more four.
 * Source: IBC 1006.2.1.1 and Table 1006.3.2 (2018), 1006.3.3 (2021, 2024), second-hand.
 */
export function exitsByLoad(people: Qty<'people'>): 2 | 3 | 4 {
  return people > 1000 ? 4 : people > 500 ? 3 : 2;
}

interface OneExitRow {
  readonly groups: readonly Group[];
  /** Most people of a space with one exit. */
  readonly people: number;
  /** The row holds only in a sprinklered building. */
  readonly sprinkleredOnly?: true;
  readonly commonPathFt: number;
  /** Common path when sprinklered, where it is longer. */
  readonly sprinkleredPathFt?: number;
  /** Common path for 30 people or fewer, where it is longer. */
  readonly smallPathFt?: number;
}

/**
 * Spaces with one exit. Source: IBC Table 1006.2.1 (2018 and later); the 49 and the either/or rule second-hand,
 * the rest from general knowledge.
 */
const oneExitRows: readonly OneExitRow[] = [
  { groups: ['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'E', 'M'], people: 49, commonPathFt: 75 },
  { groups: ['B', 'F-1', 'F-2'], people: 49, commonPathFt: 75, sprinkleredPathFt: 100, smallPathFt: 100 },
  { groups: ['U'], people: 49, commonPathFt: 75, smallPathFt: 100 },
  { groups: ['S-1', 'S-2'], people: 29, commonPathFt: 75, sprinkleredPathFt: 100, smallPathFt: 100 },
  { groups: ['H-1', 'H-2', 'H-3'], people: 3, sprinkleredOnly: true, commonPathFt: 25 },
  { groups: ['H-4', 'H-5'], people: 10, sprinkleredOnly: true, commonPathFt: 75 },
  { groups: ['I-1.1', 'I-1.2', 'I-2', 'I-4'], people: 10, sprinkleredOnly: true, commonPathFt: 75 },
  { groups: ['I-3'], people: 10, sprinkleredOnly: true, commonPathFt: 100 },
  { groups: ['R-1'], people: 10, sprinkleredOnly: true, commonPathFt: 75 },
  { groups: ['R-2', 'R-3', 'R-4'], people: 20, sprinkleredOnly: true, commonPathFt: 125 },
];
const smallLoad = 30;
/** Above this no group of the table may have one exit, so the group need not be known. */
export const mostWithOneExit = Math.max(...oneExitRows.map((row) => row.people));

export interface Space {
  readonly group: Group;
  readonly people: Qty<'people'>;
  /** Longest way before a person has a choice of two ways. */
  readonly commonPath?: Qty<'ft'>;
  readonly sprinklered?: boolean;
}

/** `oneMayDo` speaks of load and common path only; `ask` names what is missing in `says`. */
export interface ExitsAnswer {
  readonly answer: 'oneMayDo' | 'moreThanOne' | 'ask';
  readonly says: string;
}

/** Whether one exit may serve a space: load AND common path must both stay within the table. */
export function oneExitMayDo(space: Space): ExitsAnswer {
  const row = oneExitRows.find((one) => one.groups.includes(space.group));
  if (!row) return { answer: 'ask', says: `The table has no row for Group ${space.group}.` };
  if (space.people > row.people) {
    return {
      answer: 'moreThanOne',
      says: `More than ${row.people} people in Group ${space.group} need a second exit.`,
    };
  }
  if (row.sprinkleredOnly && space.sprinklered !== true) {
    return {
      answer: 'ask',
      says: `One exit for Group ${space.group} is tabulated only for a sprinklered building.`,
    };
  }
  const longest = Math.max(
    row.commonPathFt,
    space.sprinklered === true ? (row.sprinkleredPathFt ?? 0) : 0,
    space.people <= smallLoad ? (row.smallPathFt ?? 0) : 0,
  );
  if (space.commonPath === undefined)
    return { answer: 'ask', says: `The common path must be ${longest} ft or less; it is not measured.` };
  if (space.commonPath > longest)
    return {
      answer: 'moreThanOne',
      says: `The common path is longer than ${longest} ft, so a second exit is needed.`,
    };
  return {
    answer: 'oneMayDo',
    says: `Load and common path stay within the table (${row.people} people, ${longest} ft).`,
  };
}

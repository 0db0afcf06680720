import { factAt } from '../model/fact.ts';
import type { FactKey } from '../model/fields.ts';
import { compareMarks, type Opening, type Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { midSentence, startSentence } from '../text/midSentence.ts';
import { valueForSurveyor } from './amounts.ts';
import { standardTemplates } from './standardTemplates.ts';
import { openingLike } from './takeOver.ts';

export interface Template {
  readonly id: string;
  readonly mark: string;
  readonly says: string;
}

export interface Templates {
  readonly shown: readonly Template[];
  /** How many more have what was typed in their mark. */
  readonly more: number;
}

/** As many as a thumb passes without a list that scrolls. */
const mostShown = 6;

/** "2-03" is found by "203", "2 03" and "03". */
function bare(mark: string): string {
  return mark.toLowerCase().replaceAll(/[^\p{L}\p{N}]/gu, '');
}

const tellsApart = ['leafMaterial', 'doorType', 'latch'] as const satisfies readonly FactKey[];

function inShort({ facts }: Opening): string {
  return startSentence(
    tellsApart
      .flatMap((key) => {
        const fact = factAt(facts, key);
        return fact && fact.is !== 'unknown' ? [midSentence(valueForSurveyor(key, fact.value))] : [];
      })
      .join('; '),
  );
}

function tellsAnything({ facts }: Opening): boolean {
  return Object.values(facts).some((fact) => fact.is !== 'unknown');
}

/** Openings that another may be like, found by mark: those that begin so, then those on this floor. */
export function templatesFor(
  project: Project,
  typed: string,
  near: Pick<Opening, 'id' | 'floorId'>,
): Templates {
  const wanted = bare(typed);
  const rank = (one: Opening) =>
    (bare(one.mark).startsWith(wanted) ? 0 : 2) + (one.floorId === near.floorId ? 0 : 1);
  const found = [...Object.values(project.openings), ...standardTemplates(project)]
    .filter((one) => tellsAnything(one) && bare(one.mark).includes(wanted))
    .toSorted((a, b) => rank(a) - rank(b) || compareMarks(a.mark, b.mark));
  return {
    shown: found.slice(0, mostShown).map((one) => ({ id: one.id, mark: one.mark, says: inShort(one) })),
    more: Math.max(0, found.length - mostShown),
  };
}

/** An opening like another on a floor of its own choice: a room of another floor is not the one it is reached from. */
export function openingLikeOn(id: string, mark: string, like: Opening, floorId: string | null): Opening {
  const opening = openingLike(id, mark, like);
  return floorId === like.floorId ? opening : { ...opening, floorId, fromSpaceId: null };
}

export const templateWords = {
  open: 'Same as another door, but …',
  title: 'Same as which door?',
  find: 'Find by mark',
  none: (typed: string) => `No mark has “${typed.trim()}” in it, of doors with any answer.`,
  nothing: 'No other door has an answer yet.',
  more: (count: number) => `${counted(count, 'more door')}: type a part of the mark.`,
  chosen: (mark: string) => `Same as ${mark}`,
  other: 'Another door',
  here: (mark: string, count: number) => `Here at ${mark}: take over ${counted(count, 'answer')}`,
  beside: 'Add a new opening like it',
  add: (mark: string, like: string) => `Add ${mark}, the same as ${like}`,
  noMark: 'No mark on this floor yet to count on from: type the first.',
} as const;

import { figure, peopleInWords } from '../egress/reason.ts';
import { counted } from '../text/counted.ts';

/** Every sentence about the load of a space and its ways out. */

interface Needed {
  readonly from: number;
  readonly to: number;
}
const ways = (count: number) => counted(count, 'exit');
const are = (count: number) => (count === 1 ? 'is' : 'are');
const list = (marks: readonly string[]) => (marks.length === 0 ? '' : ` (${marks.join(', ')})`);

export const egressSays = {
  exitsShort: (space: string, people: number, needed: Needed, found: readonly string[]) =>
    `${space}: ${peopleInWords(people)} need ${needed.from === needed.to ? '' : 'at least '}${ways(needed.from)}; ${found.length === 0 ? 'none is' : `${found.length} ${are(found.length)}`} found${list(found)}.`,
  exitsPerhaps: (space: string, needed: string, found: number, perhaps: readonly string[]) =>
    `${space}: needs ${needed} and has ${ways(found)} for certain; whether ${perhaps.join(', ')} ${perhaps.length === 1 ? 'counts' : 'count'} is not known.`,
  exitsUndecided: (space: string, why: string) => `${space}: whether one exit is enough is not known. ${why}`,
  capacityShort: (space: string, people: number, passes: number, marks: readonly string[]) =>
    `${space}: ${peopleInWords(people)}, and the doors${list(marks)} are wide enough for ${passes}.`,
  capacityOpen: (space: string, people: number, passes: number, marks: readonly string[]) =>
    `${space}: ${peopleInWords(people)}; the doors whose width is known pass ${passes}. The width of ${marks.join(', ')} is missing.`,
  lostExit: (space: string, people: number, left: number) =>
    `${space}: without its largest door the others are wide enough for ${left} of ${peopleInWords(people)}; at least half should remain (IBC 1005.5, from general knowledge).`,
  narrow: (mark: string, space: string, clearIn: number, least: number) =>
    `${mark}: ${figure(clearIn)} in clear; egress from ${space} needs ${least} in (IBC 1010.1.1, ADA 404.2.3).`,
  perhapsNarrow: (mark: string, space: string, clearIn: number, least: number) =>
    `${mark}: about ${figure(clearIn)} in clear by leaf and hinges; egress from ${space} needs ${least} in. Measure it.`,
  panicMissing: (mark: string, space: string, people: number) =>
    `${mark}: the ${peopleInWords(people)} of ${space} require panic hardware here, and the door has none.`,
  panicOpen: (mark: string, space: string, people: number) =>
    `${mark}: the ${peopleInWords(people)} of ${space} ask for panic hardware here; whether the door has it is not surveyed.`,
  loadDiffers: (space: string, says: string) => `${space}: ${says}`,
} as const;

/** What a door is for the people of one space, on the page of the door. */
export function doorOfSpaceInWords(
  space: string,
  people: number | null,
  needed: string,
  passes: number | null,
): string {
  const load = people === null ? 'whose load is not known' : `which holds ${peopleInWords(people)}`;
  const width = passes === null ? 'Its egress capacity is not known' : `It passes ${figure(passes)}`;
  return `An exit from ${space}, ${load}. ${width}. Exits required: ${needed}.`;
}

/** Said on screen and paper, because it could be taken for computed. */
export const notComputedHere =
  'Not computed: stairs, travel distance, exit separation, fixed seating, and several functions in one room.';
export const throughInWords = (names: readonly string[]) =>
  `${names.join(', ')}: their people leave through here and are not added.`;
export const corridorInWords =
  'A corridor carries the people from its rooms; its own load does not determine how many exits it needs.';

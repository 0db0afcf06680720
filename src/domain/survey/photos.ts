import type { Edit } from '../commands/command.ts';
import { type FactKey, fieldInfo, isFactKey, openingFactKeys } from '../model/fields.ts';
import type { Arrow, Photo } from '../model/photo.ts';
import { compareMarks, type Opening, type Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';
import { type Station, stationOf, stationOrder, stations } from './stations.ts';

/** Photos of openings: what each shows, in which order they stand, and which are missing. */

/** What can be seen on a picture. What is wanted, who is in the room and what the building has cannot. */
const seen: ReadonlySet<Station> = new Set(['face', 'edge', 'frame', 'head', 'wall']);
export const photoPlaces: readonly Station[] = stationOrder.filter((station) => seen.has(station));

const isStation = (about: string): about is Station => Object.hasOwn(stations, about);

/** The place a picture would show when it is taken at this station; undefined where none would show anything. */
export function photoPlace(station: string): Station | undefined {
  return isStation(station) && seen.has(station) ? station : undefined;
}

/** "Fire label", "Head", or "The opening" for what this version does not know. */
export function aboutInWords(about: string): string {
  if (isFactKey(about)) return fieldInfo(about).label;
  return isStation(about) ? stations[about] : 'The opening';
}

/** "Photo, fire label: the lower line is worn; 2 arrows". */
export function photoInWords(photo: Pick<Photo, 'about' | 'caption' | 'arrows'>): string {
  const caption = photo.caption.trim();
  const arrows = Object.keys(photo.arrows).length;
  return `Photo, ${midSentence(aboutInWords(photo.about))}${caption === '' ? '' : `: ${caption}`}${
    arrows === 0 ? '' : `; ${counted(arrows, 'arrow')}`
  }`;
}

/** Round the door as it is walked, then in the order they were taken. */
export function photosAt({ photos }: Pick<Project, 'photos'>, openingId: string): readonly Photo[] {
  const place = ({ about }: Photo) => {
    const station = placeOfPhoto(about);
    return station === undefined ? stationOrder.length : stationOrder.indexOf(station);
  };
  return Object.values(photos)
    .filter((photo) => photo.openingId === openingId)
    .toSorted((a, b) => place(a) - place(b) || compare(a.at, b.at) || compare(a.id, b.id));
}
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** The station a photo belongs to; undefined for the opening as a whole. */
function placeOfPhoto(about: string): Station | undefined {
  if (isFactKey(about)) return stationOf(about);
  return isStation(about) ? about : undefined;
}

/** Whether a picture can show what this question asks. */
export function canBeShown(key: FactKey): boolean {
  return fieldInfo(key).scope !== 'building' && seen.has(stationOf(key));
}

/** Facts nobody could tell at the door and that a picture of it would let somebody tell at the desk, without one yet. */
export function photosMissing(project: Project, opening: Opening): readonly FactKey[] {
  const taken = new Set(photosAt(project, opening.id).map(({ about }) => about));
  return openingFactKeys.filter(
    (key) =>
      opening.facts[key]?.is === 'unknown' &&
      canBeShown(key) &&
      !taken.has(key) &&
      !taken.has(stationOf(key)),
  );
}

/** "No photo yet of: fire label, hinges." */
export function photosMissingInWords(keys: readonly FactKey[]): string {
  return `No photo yet of: ${keys.map((key) => midSentence(fieldInfo(key).label)).join(', ')}.`;
}

/** Photos whose picture is in none of the places it could be, said once a file was opened. */
export function picturesMissing({ photos, openings }: Project, missing: ReadonlySet<string>): string {
  const marks = Object.values(photos)
    .filter(({ sha256 }) => missing.has(sha256))
    .map(({ openingId }) => openings[openingId]?.mark ?? 'an opening that was removed');
  if (marks.length === 0) return '';
  return `The file holds ${counted(marks.length, 'photo')} damaged or not at all: ${[...new Set(marks)].toSorted(compareMarks).join(', ')}. What is written about them is kept, and everything else opened. The pictures come back with a file that holds them.`;
}

/** What a person may change about a photo; the picture itself never changes. */
export function captioned(photo: Photo, caption: string): Edit {
  return { kind: 'putPhoto', id: photo.id, value: { ...photo, caption } };
}

export function movedTo(photo: Photo, about: string): Edit {
  return { kind: 'putPhoto', id: photo.id, value: { ...photo, about } };
}

/** Where an arrow comes from and what it points at, as shares of width and height. */
export interface Ends {
  readonly fromX: number;
  readonly fromY: number;
  readonly toX: number;
  readonly toY: number;
}

/** With an arrow added or moved; null takes one away. */
export function pointedAt(photo: Photo, id: string, arrow: Ends | null): Edit {
  const { [id]: _before, ...others } = photo.arrows;
  const arrows = arrow === null ? others : { ...others, [id]: { id, ...within(arrow) } };
  return { kind: 'putPhoto', id: photo.id, value: { ...photo, arrows } };
}

/** Drawn past the edge of the picture it ends at the edge. */
function within({ fromX, fromY, toX, toY }: Ends): Ends {
  const share = (value: number) => Math.round(Math.min(1, Math.max(0, value)) * 1e4) / 1e4;
  return { fromX: share(fromX), fromY: share(fromY), toX: share(toX), toY: share(toY) };
}

/** One that comes from below left and points at the middle, to be moved from there. */
export const firstArrow: Ends = { fromX: 0.3, fromY: 0.7, toX: 0.5, toY: 0.5 };
/** How far one press of an arrow key moves an end. */
const keyStep = 0.02;

/** An end of an arrow moved with the keyboard; undefined for a key that moves nothing. */
export function movedByKey(arrow: Arrow, end: 'from' | 'to', key: string): Ends | undefined {
  const [x, y] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key] ?? [];
  if (x === undefined || y === undefined) return undefined;
  const { fromX, fromY, toX, toY } = arrow;
  return end === 'from'
    ? { fromX: fromX + x * keyStep, fromY: fromY + y * keyStep, toX, toY }
    : { fromX, fromY, toX: toX + x * keyStep, toY: toY + y * keyStep };
}

/** Shorter than this a press and a lift were a tap, and no arrow was meant. */
const shortestArrow = 0.02;
export function isArrow({ fromX, fromY, toX, toY }: Ends): boolean {
  return Math.hypot(toX - fromX, toY - fromY) >= shortestArrow;
}

export const photoWords = {
  title: 'Photos',
  take: 'Take a photo',
  choose: 'Choose pictures',
  ofThis: 'Photo of this',
  bar: 'Photo',
  none: 'No photos yet.',
  caption: 'Caption',
  shows: 'Shows',
  opening: 'The opening',
  draw: 'Draw an arrow',
  drawing: 'Press at the tail of the arrow, drag to what it points at, and let go.',
  arrowTail: (count: number) => `Tail of arrow ${count}`,
  arrowHead: (count: number) => `Head of arrow ${count}`,
  moveByKeys: 'Arrow keys move an end of an arrow once it is chosen.',
  removeArrow: (count: number) => `Remove arrow ${count}`,
  remove: 'Remove photo',
  removed: 'Photo removed. Undo brings it back.',
  gone: 'This picture is not in this browser. Its caption and arrows are kept. Open a project file that includes the picture to bring it back.',
  loading: 'Reading the picture …',
  working: 'Saving the photo …',
  kept: (about: string) => `Photo kept: ${about}.`,
  again: 'Try again',
  toFile: 'Save the picture to a file',
  refusedByCamera:
    'No picture was taken. If the camera is blocked for this page, allow it in the browser’s settings, or choose a picture from the device.',
  missing: 'Photos still to take',
  stripped:
    'Photos are stored upright, at most 1600 pixels on the long side, with location and time removed.',
} as const;

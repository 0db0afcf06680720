import type { Edit } from '../commands/command.ts';
import { factAt, factEntries, type AnyFact } from '../model/fact.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { oneSpelling } from '../survey/readValue.ts';
import { counted } from '../text/counted.ts';
import { valueInWords } from '../text/format.ts';
import type { Imported } from './csv.ts';
import { type RoomProposal, withTaken } from './roomProposals.ts';

type Field = 'mark' | 'floorId' | 'fromSpaceId' | 'toSpaceId' | 'notes' | 'override' | 'externalId';

/** One thing that the file says otherwise than the project, of a door or of the building. */
interface ChangeOf {
  /** Names the door and the field, so that a choice is remembered while the preview is corrected. */
  readonly key: string;
  readonly field: Field | FactKey;
  readonly mark: string;
  readonly what: string;
  readonly mine: string;
  readonly theirs: string;
  /** Why the project's value stays unless somebody says otherwise; empty where the file's is taken. */
  readonly stays: string;
}
/** What the file says otherwise of a door, or of the building. */
export type Change = ChangeOf &
  (
    | { readonly openingId: string; readonly value: unknown }
    | { readonly openingId: null; readonly value: AnyFact }
  );

export interface Again {
  readonly added: readonly Opening[];
  /** Doors of the file that say nothing new. */
  readonly same: number;
  readonly changed: readonly Change[];
  /** Doors of the project that the file does not list; empty where it lists none of them. */
  readonly gone: readonly Opening[];
}

/** What a person said against the usual: by key of a change, and whether doors no longer listed go. */
export interface AgainChoices {
  readonly takes: Readonly<Record<string, boolean>>;
  readonly removeGone: boolean;
  /** Uses and numbers of occupants of a model that are taken, by key of the proposal. */
  readonly rooms: Readonly<Record<string, boolean>>;
}
export const usualChoices: AgainChoices = { takes: {}, removeGone: false, rooms: {} };

const surveyed = 'surveyed here';
const known = 'known here, only assumed by the file';
const here = 'stands here already';

/** A newer list against the project: what comes, what changes, what is not listed any more. */
export function compareAgain(project: Project, imported: Imported): Again {
  const met = new Set(imported.meets.values());
  const added = imported.openings.filter(({ id }) => !imported.meets.has(id));
  const byDoor = imported.openings.flatMap((theirs) => {
    const mine = project.openings[imported.meets.get(theirs.id) ?? ''];
    return mine ? [changesOf(project, imported, mine, theirs)] : [];
  });
  const gone = met.size === 0 ? [] : Object.values(project.openings).filter(({ id }) => !met.has(id));
  return {
    added,
    same: byDoor.filter((changes) => changes.length === 0).length,
    changed: [...byDoor.flat(), ...buildingChanges(project, imported)],
    gone,
  };
}

export const isTaken = ({ key, stays }: Change, { takes }: AgainChoices) =>
  Object.hasOwn(takes, key) ? takes[key] === true : stays === '';

function changesOf(project: Project, imported: Imported, mine: Opening, theirs: Opening): readonly Change[] {
  const change = (
    field: Change['field'],
    what: string,
    words: readonly [string, string],
    stays: string,
    value: unknown,
  ): Change => ({
    key: `${mine.id} ${field}`,
    openingId: mine.id,
    field,
    mark: mine.mark,
    what,
    mine: words[0],
    theirs: words[1],
    stays,
    value,
  });
  const texts = (['mark', 'notes', 'externalId'] as const).flatMap((field): Change[] => {
    const [a, b] = [mine[field] ?? '', theirs[field] ?? ''];
    // A cell is read without the blanks around it; they say nothing new.
    if (b === '' || a.trim() === b) return [];
    return [change(field, fieldWords[field], [a, b], a === '' ? '' : here, b)];
  });
  const places = (['floorId', 'fromSpaceId', 'toSpaceId'] as const).flatMap((field): Change[] => {
    const [a, b] = [mine[field], theirs[field]];
    const names = [placeName(project, imported, a), placeName(project, imported, b)] as const;
    if (b === null || a === b || oneSpelling(names[0]) === oneSpelling(names[1])) return [];
    return [change(field, fieldWords[field], names, a === null ? '' : here, b)];
  });
  const override = theirs.override;
  const chosen =
    override === null || JSON.stringify(override) === JSON.stringify(mine.override)
      ? []
      : [
          change(
            'override',
            fieldWords.override,
            [choiceWords(mine), choiceWords(theirs)],
            mine.override === null ? '' : here,
            override,
          ),
        ];
  const facts = factEntries(theirs.facts).flatMap(([key, fact]): Change[] => {
    const before = factAt(mine.facts, key);
    const stays = factStays(before, fact);
    if (stays === undefined) return [];
    const words = [factWords(key, before), factWords(key, fact)] as const;
    return [change(key, fieldInfo(key).label, words, stays, fact)];
  });
  return [...texts, ...places, ...chosen, ...facts];
}

function buildingChanges(project: Project, imported: Imported): readonly Change[] {
  return factEntries(imported.building).flatMap(([key, fact]): Change[] => {
    const before = factAt(project.building, key);
    const stays = factStays(before, fact);
    if (stays === undefined) return [];
    const { label } = fieldInfo(key);
    const [mine, theirs] = [factWords(key, before), factWords(key, fact)];
    const change = { key: `building ${key}`, field: key, mark: 'Building', what: label };
    return [
      {
        ...change,
        openingId: null,
        mine,
        theirs,
        stays: before && before.is !== 'unknown' && stays === '' ? here : stays,
        value: fact,
      },
    ];
  });
}

/** Undefined where the file says nothing new; empty where it is taken; otherwise why it is not. */
function factStays(mine: AnyFact | undefined, theirs: AnyFact): string | undefined {
  if (mine === undefined) return '';
  if (theirs.is === 'unknown') return undefined;
  if (mine.is === 'unknown') return '';
  const isSame = mine.value === theirs.value;
  if (isSame && (mine.is === 'known' || theirs.is === 'assumed')) return undefined;
  // Only an edit by a person leaves a time; what was imported has none.
  if (mine.at !== undefined) return isSame ? undefined : surveyed;
  return mine.is === 'known' && theirs.is === 'assumed' ? known : '';
}

const fieldWords: Readonly<Record<Field, string>> = {
  mark: 'Mark',
  floorId: 'Floor',
  fromSpaceId: 'From',
  toSpaceId: 'To',
  notes: 'Notes',
  override: 'Choice by hand',
  externalId: 'GlobalId',
};

function placeName(project: Project, imported: Imported, id: string | null): string {
  if (id === null) return '';
  const all = [...imported.floors, ...imported.spaces];
  return (project.floors[id] ?? project.spaces[id] ?? all.find((one) => one.id === id))?.name ?? '';
}

const choiceWords = ({ override }: Opening) =>
  override === null ? '' : `${override.candidate}: ${override.reason}`;

function factWords(key: FactKey, fact: AnyFact | undefined): string {
  if (fact === undefined) return '';
  if (fact.is === 'unknown') return 'unknown';
  return `${valueInWords(key, fact.value)}${fact.is === 'assumed' ? ', assumed' : ''}`;
}

/** The edits of an import, all of them one step to take back. */
export function importEdits(
  project: Project,
  imported: Imported,
  choices: AgainChoices = usualChoices,
): readonly Edit[] {
  const again = compareAgain(project, imported);
  const taken = again.changed.filter((change) => isTaken(change, choices));
  const after = new Map<string, Opening>(again.added.map((opening) => [opening.id, opening]));
  for (const change of taken) {
    if (change.openingId === null) continue;
    const opening = after.get(change.openingId) ?? project.openings[change.openingId];
    if (opening) after.set(opening.id, withChange(opening, change));
  }
  const rooms = imported.rooms.proposals.filter(({ key }) => choices.rooms[key] === true);
  const { floors, spaces: needed } = neededPlaces(imported, [...after.values()], rooms);
  const known = new Set(rooms.map(({ spaceId }) => spaceId));
  const met = Object.values(project.spaces).filter(({ id }) => known.has(id));
  const spaces = [...needed, ...met].map((space) => withTaken(space, rooms));
  return [
    ...floors.map((value): Edit => ({ kind: 'putFloor', id: value.id, value })),
    ...spaces.map((value): Edit => ({ kind: 'putSpace', id: value.id, value })),
    // Removed first, so that their marks are free.
    ...(choices.removeGone ? again.gone : []).map(
      ({ id }): Edit => ({ kind: 'putOpening', id, value: null }),
    ),
    ...[...after.values()].map(
      (value): Edit => ({
        kind: 'putOpening',
        id: value.id,
        value,
      }),
    ),
    ...taken.flatMap((change): Edit[] =>
      change.openingId === null ? [{ kind: 'setBuildingFact', fact: change.field, value: change.value }] : [],
    ),
  ];
}

function withChange(opening: Opening, { field, value }: Change): Opening {
  if (Object.hasOwn(fieldWords, field)) return { ...opening, [field]: value };
  return { ...opening, facts: { ...opening.facts, [field]: value } };
}

/** Places that a door which comes in stands at, and rooms of a model that are there without any door. */
function neededPlaces(imported: Imported, after: readonly Opening[], rooms: readonly RoomProposal[]) {
  const taken = new Set(rooms.map(({ spaceId }) => spaceId));
  const placesOf = (openings: readonly Opening[]) =>
    new Set(openings.flatMap(({ floorId, fromSpaceId, toSpaceId }) => [floorId, fromSpaceId, toSpaceId]));
  const [now, asRead] = [placesOf(after), placesOf(imported.openings)];
  const spaces = imported.spaces.filter(
    ({ id, areaFt2 }) => now.has(id) || !asRead.has(id) || areaFt2 !== null || taken.has(id),
  );
  const underSpaces = new Set(spaces.map(({ floorId }) => floorId));
  const floors = imported.floors.filter(({ id }) => now.has(id) || underSpaces.has(id) || !asRead.has(id));
  return { floors, spaces };
}

export function againInWords({ added, same, changed, gone }: Again): string {
  const doors = new Set(changed.flatMap(({ openingId }) => openingId ?? [])).size;
  const parts = [
    `${counted(added.length, 'opening')} added`,
    `${doors} changed`,
    `${same} the same`,
    `${gone.length} not in the file`,
  ];
  return `Against the project: ${parts.join(', ')}.`;
}

/** Nothing is met: the file is a first one, and there is nothing to compare. */
export const isFirst = (imported: Imported) => imported.meets.size === 0;

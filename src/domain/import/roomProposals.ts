import { useFactors } from '../egress/occupantFactors.ts';
import { figure, peopleInWords } from '../egress/reason.ts';
import type { Project, Space } from '../model/project.ts';
import type { Use } from '../model/uses.ts';
import { counted } from '../text/counted.ts';
import type { GivenSpace, SaidOfRoom } from './grid.ts';
import { readOccupancyType, readRoomWords, type WordsRead } from './roomWords.ts';

/** A room of a model beside the space it stands for. */
export interface GivenRoom {
  readonly spaceId: string;
  readonly given: GivenSpace;
}

/** A use or a number of people that a model lets propose for a room. Nothing of it is taken unless somebody takes it. */
export interface RoomProposal {
  /** Names the room and what is proposed, so that a choice is remembered while the preview is corrected. */
  readonly key: string;
  readonly spaceId: string;
  readonly room: string;
  readonly floor: string;
  readonly what: 'use' | 'occupantLoad';
  readonly value: Use | number;
  /** The value in words. */
  readonly reads: string;
  /** What the model says, each with where it says so. */
  readonly words: string;
  /** Why a person should look before taking it; empty where nothing speaks against it. */
  readonly doubt: string;
  /** Floor area as the use measures it, where the model states that one; null leaves the area as it is. */
  readonly areaFt2: number | null;
}

export interface RoomUses {
  readonly proposals: readonly RoomProposal[];
  /** Rooms whose words are not read, with why. */
  readonly unread: readonly {
    readonly words: string;
    readonly why: string;
    readonly rooms: readonly string[];
  }[];
  /** Corridors, stairs, toilets: counted with the rooms they serve. */
  readonly passed: number;
}

const sources: Readonly<Record<SaidOfRoom['where'], string>> = {
  occupancy: 'occupancy type',
  class: 'classification',
  type: 'type',
  name: 'name',
};
/** What was classified on purpose speaks before what a room is called. */
const order = Object.keys(sources) as readonly SaidOfRoom['where'][];

export const wordsInWords = (said: readonly SaidOfRoom[]) =>
  said.map(({ where, text }) => `${sources[where]} “${text}”`).join('; ');

function readSaid({ where, text }: SaidOfRoom): WordsRead {
  return where === 'occupancy' ? readOccupancyType(text) : readRoomWords(text);
}

/** What the sources together say: the first that names a use, with a doubt where another one says otherwise. */
function readAll(said: readonly SaidOfRoom[]): WordsRead {
  const read = said.map((one) => ({ one, means: readSaid(one) }));
  const first = read.find(({ means }) => means.is === 'use');
  if (first?.means.is !== 'use') {
    return (['open', 'passed'] as const).reduce<WordsRead>(
      (found, is) =>
        found.is === 'unknown' ? (read.find(({ means }) => means.is === is)?.means ?? found) : found,
      { is: 'unknown' },
    );
  }
  const { use, doubt } = first.means;
  const against = read.flatMap(({ one, means }) => {
    if (means.is === 'unknown' || (means.is === 'use' && means.use === use)) return [];
    const says =
      means.is === 'use'
        ? useFactors[means.use].name
        : means.is === 'passed'
          ? 'a space people pass through'
          : 'several uses';
    return [`Its ${sources[one.where]} “${one.text}” means ${says}.`];
  });
  return { is: 'use', use, doubt: [doubt, ...against].filter((one) => one !== '').join(' ') };
}

/** What a model says of its rooms against what the project knows of them. */
export function roomUsesOf(rooms: readonly GivenRoom[], spaces: Project['spaces']): RoomUses {
  const proposals: RoomProposal[] = [];
  const unread = new Map<string, { words: string; why: string; rooms: string[] }>();
  let passed = 0;
  for (const { spaceId, given } of rooms) {
    const said = order.flatMap((where) => given.said.filter((one) => one.where === where));
    const room = [given.name, given.number].filter((part) => part !== '').join(' ');
    const before = spaces[spaceId];
    const base = { spaceId, room, floor: given.floor, words: wordsInWords(said) };
    const read = readAll(said);
    if (read.is === 'use') proposals.push(...proposedUse(base, given, read, before));
    else if (read.is === 'passed') passed += 1;
    else if (before?.use === undefined || before.use === null) {
      const why = read.is === 'open' ? read.says : 'These words are not known here.';
      const row = unread.get(`${base.words} ${why}`) ?? { words: base.words, why, rooms: [] };
      row.rooms.push(room);
      unread.set(`${base.words} ${why}`, row);
    }
    proposals.push(...proposedLoad(base, given, before));
  }
  return { proposals, unread: [...unread.values()], passed };
}

type Base = Pick<RoomProposal, 'spaceId' | 'room' | 'floor' | 'words'>;

function proposedUse(
  base: Base,
  given: GivenSpace,
  { use, doubt }: { readonly use: Use; readonly doubt: string },
  before: Space | undefined,
): readonly RoomProposal[] {
  if (before?.use === use) return [];
  const { name, measure } = useFactors[use];
  const isNet = measure === 'net';
  const { areaFt2, netFt2 } = given;
  const doubts = [
    doubt,
    ...(before?.use ? [`The project says ${useFactors[before.use].name}.`] : []),
    ...(isNet && netFt2 === null && areaFt2 !== null
      ? ['The use is measured net, and the model states the gross area: the load comes out on the high side.']
      : []),
  ];
  const isOther = isNet && netFt2 !== null && netFt2 !== areaFt2 && before?.areaFt2 === undefined;
  return [
    {
      ...base,
      key: `use ${base.floor} ${base.room}`,
      what: 'use',
      value: use,
      reads: isOther ? `${name}, by the net area of ${figure(netFt2)} ft²` : name,
      doubt: doubts.filter((one) => one !== '').join(' '),
      areaFt2: isOther ? netFt2 : null,
    },
  ];
}

function proposedLoad(base: Base, given: GivenSpace, before: Space | undefined): readonly RoomProposal[] {
  if (given.people === null || before?.occupantLoad === given.people) return [];
  const here = before?.occupantLoad;
  return [
    {
      ...base,
      key: `occupantLoad ${base.floor} ${base.room}`,
      what: 'occupantLoad',
      value: given.people,
      reads: peopleInWords(given.people),
      words: `number of occupants ${given.people}`,
      doubt: [
        'A number of the designer; where use and area come to more, the larger governs.',
        ...(here === undefined || here === null ? [] : [`The project says ${peopleInWords(here)}.`]),
      ].join(' '),
      areaFt2: null,
    },
  ];
}

/** The space with what was taken, and where it came from. */
export function withTaken(space: Space, taken: readonly RoomProposal[]): Space {
  return taken
    .filter(({ spaceId }) => spaceId === space.id)
    .reduce<Space>((now, { what, value, words, areaFt2 }) => {
      const from = `building model: ${words}`;
      return what === 'use'
        ? { ...now, use: value as Use, useFrom: from, ...(areaFt2 === null ? {} : { areaFt2 }) }
        : { ...now, occupantLoad: Number(value), occupantLoadFrom: from };
    }, space);
}

export function roomUsesInWords({ proposals, unread, passed }: RoomUses): string {
  const uses = proposals.filter(({ what }) => what === 'use');
  const loads = proposals.length - uses.length;
  const doubted = uses.filter(({ doubt }) => doubt !== '').length;
  const open = unread.reduce((sum, { rooms }) => sum + rooms.length, 0);
  const parts = [
    `A use can be read for ${counted(uses.length, 'room')}${uses.length === 0 ? '' : `, ${doubted} of them in doubt`}`,
    ...(loads === 0 ? [] : [`${counted(loads, 'number')} of occupants proposed`]),
    ...(open === 0 ? [] : [`${counted(open, 'room')} not read`]),
    ...(passed === 0 ? [] : [`${counted(passed, 'space')} people only pass through`]),
  ];
  return `${parts.join('; ')}. Nothing of it comes in unless you take it.`;
}

/** Every room whose words are not taken over by themselves, for a record without a screen. */
export function roomsTold(uses: RoomUses): readonly string[] {
  const { proposals, unread } = uses;
  if (proposals.length === 0 && unread.length === 0) return [];
  return [
    roomUsesInWords(uses),
    ...proposals.map(({ room, reads, words, doubt }) =>
      `${room}: may be ${reads} (${words}). ${doubt}`.trim(),
    ),
    ...unread.map(({ rooms, words, why }) => `${rooms.join(', ')}: ${words}. ${why}`),
  ];
}

/** What is taken in one press: with or without what is in doubt. */
export function takingAll(
  proposals: readonly RoomProposal[],
  alsoDoubted: boolean,
): Readonly<Record<string, true>> {
  const taken = proposals.filter(({ doubt }) => alsoDoubted || doubt === '');
  return Object.fromEntries(taken.map(({ key }) => [key, true as const]));
}

import { newSpace } from '../model/newProject.ts';
import { longestName } from '../model/ids.ts';
import { type Floor, type Project, type Space, spaceSchema } from '../model/project.ts';
import type { Said } from './architect.ts';
import type { Role } from './headers.ts';
import { isWay, spaceKindOf } from './rooms.ts';
import { counted } from '../text/counted.ts';
import { roomInWords } from './buildingModel.ts';
import type { GivenPlaces, GivenSpace } from './grid.ts';
import type { GivenRoom } from './roomProposals.ts';
import { oneSpelling } from '../survey/readValue.ts';

export interface Places {
  readonly floorId: string | null;
  readonly fromSpaceId: string | null;
  readonly toSpaceId: string | null;
  readonly from: Room | undefined;
  readonly to: Room | undefined;
}
export interface Room {
  readonly name: string;
  readonly said: Said;
  readonly kind: Space['kind'];
}

const outsideName = 'Outside';
const ordinals = [
  'ground',
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/** Floor names that say their place; undefined when they do not. */
function levelIn(name: string): number | undefined {
  const plain = oneSpelling(name);
  const ordinal = ordinals.findIndex((word) => plain.startsWith(word));
  if (ordinal >= 0) return ordinal;
  const basement = /^(?:b|basement) ?(\d*)$/.exec(plain);
  if (basement) return -Number(basement[1] === '' ? 1 : basement[1]);
  const number = /^(?:level|floor|l|storey|story)? ?(-?\d+)(?:st|nd|rd|th)?(?: floor| level)?$/.exec(plain);
  return number ? Number(number[1]) : undefined;
}

/** Collects floors and spaces by name, taking those the project already has. */
export class PlaceBook {
  readonly floors: Floor[] = [];
  readonly spaces: Space[] = [];
  /** Rooms of a model beside their spaces. */
  readonly rooms: GivenRoom[] = [];
  /** Sentences about rooms that cannot be told apart. */
  readonly alike: string[] = [];
  readonly #floorByName = new Map<string, string>();
  readonly #spaceByName = new Map<string, string>();
  readonly #levels = new Set<number>();
  /** Places of a model's floors by name. */
  readonly #order = new Map<string, number>();
  readonly #newId: () => string;
  readonly #given: GivenPlaces;

  constructor(
    into: Pick<Project, 'floors' | 'spaces'>,
    newId: () => string,
    given: GivenPlaces = { floors: [], spaces: [] },
  ) {
    this.#newId = newId;
    this.#given = given;
    for (const floor of Object.values(into.floors)) {
      this.#floorByName.set(oneSpelling(floor.name), floor.id);
      this.#levels.add(floor.level);
    }
    for (const space of Object.values(into.spaces)) {
      this.#spaceByName.set(spaceKey(space.floorId, space.name), space.id);
    }
  }

  /** Rooms of a model come in with their areas, also those without a door. */
  addGiven(): void {
    const byElevation = this.#given.floors
      .flatMap(({ name, elevationMm }) => (elevationMm === null ? [] : [{ name, elevationMm }]))
      .toSorted((a, b) => a.elevationMm - b.elevationMm);
    // The floor nearest to zero is where people come in; the order of the others follows from their height.
    const ground = byElevation.findIndex(({ elevationMm }) => elevationMm >= -300);
    byElevation.forEach(({ name }, index) => this.#order.set(oneSpelling(name), index - Math.max(0, ground)));
    const met = new Map<string, GivenSpace[]>();
    for (const stated of this.#given.spaces) {
      const given = { ...stated, areaFt2: areaOf(stated.areaFt2), netFt2: areaOf(stated.netFt2) };
      const full = roomInWords(given);
      if (full === '' || full.length > longestName) continue;
      const floorId = given.floor === '' ? null : this.#floor(given.floor);
      const key = spaceKey(floorId, full);
      const alike = met.get(key);
      if (alike) alike.push(given);
      else met.set(key, [given]);
      const spaceId = this.#spaceNamed(full, spaceKindOf(given.name), floorId, given.areaFt2);
      if (!alike) this.rooms.push({ spaceId, given });
    }
    for (const alike of met.values()) if (alike.length > 1) this.#joinAlike(alike);
  }

  /** Rooms of one floor that share name and number are one space here, whose size and use nobody can tell. */
  #joinAlike(alike: readonly GivenSpace[]): void {
    const at = this.rooms.findIndex(({ given }) => given === alike[0]);
    const [room] = this.rooms.splice(at, 1);
    if (!room) return;
    const index = this.spaces.findIndex(({ id }) => id === room.spaceId);
    const space = this.spaces[index];
    if (space) this.spaces[index] = { ...space, areaFt2: null };
    const floor = room.given.floor === '' ? '' : ` on ${room.given.floor}`;
    this.alike.push(
      `${counted(alike.length, 'room')} of the model${floor} are called ${roomInWords(room.given)}. They come in as one space without area and use; give them names of their own.`,
    );
  }

  read(cells: readonly Said[], exterior: boolean): Places {
    const level = saidBy(cells, 'level');
    const floorId = level ? this.#floor(level.text) : null;
    const first = roomOf(saidBy(cells, 'room'), saidBy(cells, 'roomNumber'));
    const second = roomOf(saidBy(cells, 'adjoining'), saidBy(cells, 'adjoiningNumber'));
    // Columns called from and to say which side is which; only "room" and "adjoining room" do not.
    const told = [first, second].some((room) => room !== undefined && /^(from|to)\b/i.test(room.said.header));
    const [to, from] = told ? [first, second] : sides(first, second);
    const mayBeOutside = exterior && to !== undefined && !isOurOwn(to);
    return {
      floorId,
      from,
      to,
      toSpaceId: to ? this.#space(to, floorId) : null,
      fromSpaceId: from ? this.#space(from, floorId) : mayBeOutside ? this.#outside() : null,
    };
  }

  #floor(text: string): string {
    const key = oneSpelling(text);
    const before = this.#floorByName.get(key);
    if (before !== undefined) return before;
    let level = this.#order.get(key) ?? levelIn(text);
    // A name without a place, or a second one for it, goes above what is there: two floors never share a level.
    if (level === undefined || this.#levels.has(level)) level = Math.max(0, ...this.#levels) + 1;
    const floor: Floor = { id: this.#newId(), name: text.trim(), level };
    this.#levels.add(level);
    this.#floorByName.set(key, floor.id);
    this.floors.push(floor);
    return floor.id;
  }

  #space(room: Room, floorId: string | null): string {
    const onFloor = room.kind === 'outside' ? null : floorId;
    return this.#spaceNamed(room.name, room.kind, onFloor);
  }

  #outside(): string {
    return this.#spaceNamed(outsideName, 'outside', null);
  }

  #spaceNamed(
    name: string,
    kind: Space['kind'],
    floorId: string | null,
    areaFt2: number | null = null,
  ): string {
    const key = spaceKey(floorId, name);
    const before = this.#spaceByName.get(key);
    if (before !== undefined) return before;
    const space: Space = { ...newSpace(this.#newId(), name), floorId, kind, areaFt2 };
    this.#spaceByName.set(key, space.id);
    this.spaces.push(space);
    return space.id;
  }
}

/** An area that no building has is a slip of the model's unit; none is better than that one. */
function areaOf(areaFt2: number | null): number | null {
  const area = spaceSchema.shape.areaFt2.safeParse(areaFt2);
  return area.success ? area.data : null;
}

/** Under our own columns a survey is read back: what it does not say was not said. */
export const isOurOwn = (room: Room | undefined) =>
  room !== undefined && /^(from|to)$/i.test(room.said.header);

function spaceKey(floorId: string | null, name: string): string {
  return JSON.stringify([floorId, oneSpelling(name)]);
}

function saidBy(cells: readonly Said[], role: Role): Said | undefined {
  return cells.find((cell) => cell.role === role && cell.text.trim() !== '');
}

function roomOf(name: Said | undefined, number: Said | undefined): Room | undefined {
  const said = name ?? number;
  if (!said) return undefined;
  const words = [name, number].flatMap((part) => (part ? [part.text.trim()] : []));
  return { name: words.join(' '), said, kind: name ? spaceKindOf(name.text) : 'room' };
}

/**
 * People leave from the room named first; the card is shown in the adjoining one. Written the other way round,
 * with the way first and the room beside it, the two are turned. A stair is always the side one arrives on.
 */
function sides(first: Room | undefined, second: Room | undefined): [Room | undefined, Room | undefined] {
  if (!first || !second) return [first, second];
  if (isWay(first.kind) && !isWay(second.kind)) return [second, first];
  if (first.kind === 'stair' && second.kind === 'corridor') return [second, first];
  return [first, second];
}

import type { CodeBasis } from '../codes/basis.ts';
import { limits } from '../codes/limits.ts';
import { devices } from '../devices/devices.ts';
import { neededInWords } from '../egress/exitsNeeded.ts';
import { loadsDiffer } from '../egress/spaceLoad.ts';
import { compile, type Test } from '../logic/compile.ts';
import { slotOf } from '../logic/slots.ts';
import { any } from '../logic/condition.ts';
import { panicSpaces } from '../logic/derived.ts';
import { YES } from '../logic/verdict.ts';
import type { Severity } from '../simulate/outcome.ts';
import { egressSays } from './egressSentences.ts';
import type { BuildingFinding, BuildingFindingKind } from './finding.ts';
import type { SpaceEgress } from './spaceEgress.ts';
import type { WayOut } from './waysOut.ts';

type Part = Omit<SpaceEgress, 'findings'>;
const marks = (some: readonly WayOut[]) => some.map((way) => way.opening.mark);

/** What is wrong or open about one space and its doors. What nobody surveyed is a note, never a fault. */
export function egressFindings(egress: Part, basis: CodeBasis): readonly BuildingFinding[] {
  const { space, load, judged, hasDoors, ways } = egress;
  const found: BuildingFinding[] = [];
  const add = (kind: BuildingFindingKind, severity: Severity, says: string, about: readonly WayOut[]) =>
    found.push({
      kind,
      severity,
      conditions: [],
      spaceId: space.id,
      openingIds: about.map((way) => way.opening.id),
      path: [],
      closing: null,
      says,
    });
  if (loadsDiffer(load)) {
    add('loadDiffers', 'serious', egressSays.loadDiffers(space.name, load.says), []);
  }
  if (!judged || !hasDoors || load.people === null || load.people === 0) return found;
  const people = load.people;
  const counted = ways.filter((way) => way.standing === 'counts');
  const perhaps = ways.filter((way) => way.standing === 'perhaps');
  exits(egress, people, counted, perhaps, add);
  capacity(egress, people, counted, perhaps, add);
  for (const way of counted) width(way, space.name, add);
  for (const way of [...counted, ...perhaps]) {
    panic(way, egress, people, basis, add);
  }
  return found;
}

type Add = (kind: BuildingFindingKind, severity: Severity, says: string, about: readonly WayOut[]) => void;

function exits(
  { space, needed }: Part,
  people: number,
  counted: readonly WayOut[],
  perhaps: readonly WayOut[],
  add: Add,
): void {
  if (!needed) return;
  const words = neededInWords(needed);
  const most = counted.length + perhaps.length;
  if (most < needed.from) {
    add('exitsShort', 'serious', egressSays.exitsShort(space.name, people, needed, marks(counted)), counted);
  } else if (counted.length < needed.from) {
    const says = egressSays.exitsPerhaps(space.name, words, counted.length, marks(perhaps));
    add('exitsOpen', 'note', says, perhaps);
  } else if (counted.length < needed.to) {
    const why = needed.reasons[0]?.says ?? '';
    add('exitsOpen', 'note', egressSays.exitsUndecided(space.name, why), counted);
  }
}

function capacity(
  { space, needed, capacity: whole }: Part,
  people: number,
  counted: readonly WayOut[],
  perhaps: readonly WayOut[],
  add: Add,
): void {
  const isOpen = whole.unknown.length > 0 || perhaps.length > 0;
  // Without any door there is nothing to measure; that is told as a missing way out.
  if (counted.length === 0) return;
  if (whole.people < people) {
    if (!isOpen) {
      const says = egressSays.capacityShort(space.name, people, whole.people, marks(counted));
      add('capacityShort', 'serious', says, counted);
    } else if (whole.unknown.length > 0) {
      const about = counted.filter((way) => !way.capacity.known);
      const says = egressSays.capacityOpen(space.name, people, whole.people, whole.unknown);
      add('capacityOpen', 'note', says, about);
    }
  } else if (
    !isOpen &&
    counted.length > 1 &&
    needed !== null &&
    needed.from > 1 &&
    whole.withoutLargest < people / 2
  ) {
    add('exitLost', 'serious', egressSays.lostExit(space.name, people, whole.withoutLargest), counted);
  }
}

const leastIn = limits.clearWidthMinIn.editions.any.value;

function width(way: WayOut, space: string, add: Add): void {
  const { capacity: door, opening } = way;
  if (!door.known || door.oneLeafIn >= leastIn) return;
  const says = door.estimated ? egressSays.perhapsNarrow : egressSays.narrow;
  add('doorNarrow', door.estimated ? 'note' : 'serious', says(opening.mark, space, door.oneLeafIn, leastIn), [
    way,
  ]);
}

const loadSlot = slotOf('occupantLoad');
const groupSlot = slotOf('occupancyGroup');
const hasSlot = slotOf('hasExitDevice');
const latchSlot = slotOf('latch');
const readerSlot = slotOf('readerSides');
const byLoad = any(...Object.values(panicSpaces));
const compiled = new WeakMap<CodeBasis, Test>();
function asksForPanic(basis: CodeBasis): Test {
  const before = compiled.get(basis);
  if (before) return before;
  const test = compile(byLoad, basis, 'egressFindings');
  compiled.set(basis, test);
  return test;
}

/**
 * The rules' own notion of a door that needs panic hardware, asked with load and group of the space: the door's
 * survey may name a smaller number, or none.
 */
function panic(way: WayOut, { space, group }: Part, people: number, basis: CodeBasis, add: Add): void {
  const { decision } = way.edge;
  if (!decision) return;
  const slots = decision.slots.slice();
  slots[loadSlot] = people;
  if (group.value !== undefined) slots[groupSlot] = group.value;
  if (asksForPanic(basis)(slots) !== YES || slots[hasSlot] === true) return;
  // What is decided here brings the hardware with it.
  const chosen = decision.overridden ?? decision.chosen?.candidate;
  // Pushed and pulled, and no lock comes: nothing holds the leaf that a bar would have to open.
  const locks = chosen ? chosen.device.family !== 'none' : slots[readerSlot] !== 'none';
  if (!locks && slots[latchSlot] === 'pushPull') return;
  if (chosen && devices[chosen.deviceId].exitDevice) return;
  const isKnown = slots[hasSlot] === false;
  const says = isKnown ? egressSays.panicMissing : egressSays.panicOpen;
  add(
    isKnown ? 'panicMissing' : 'panicOpen',
    isKnown ? 'serious' : 'note',
    says(way.opening.mark, space.name, people),
    [way],
  );
}

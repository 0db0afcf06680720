import { arrangementOf, type Surroundings } from '../arrangement/arrange.ts';
import { type Candidate, candidateById } from '../devices/candidates.ts';
import type { ItemId } from '../devices/items.ts';
import type { FactValue } from '../model/fields.ts';
import { bareLatches, barLatches } from '../model/latches.ts';
import type { Opening, Project } from '../model/project.ts';
import { runArrangement } from '../simulate/simulate.ts';
import type { Decision } from './decision.ts';
import { valueIn } from '../logic/slots.ts';
import { isLeftAlone } from './leftAlone.ts';
import { type Simulated, simulateOpening } from './whatHappens.ts';

/** A lock that is found, told as the arrangement it comes to, with the parts that it was surveyed with. */
interface Found {
  readonly candidate: string;
  readonly parts?: readonly ItemId[];
}

const byHand: Found = { candidate: 'mechanicalLock/none/free' };
const byKeyInside: Found = { candidate: 'mechanicalLock/none/keyInside' };
const loses: readonly ItemId[] = ['powerLossRelease'];

/**
 * What each answer to “Locking found today” does to people. Where a survey leaves open what lets somebody out, as at an
 * electric bolt, nothing is told. A padlock counts as snapped shut by somebody outside: whoever is in has no hand at it.
 */
const standing: Readonly<Record<FactValue<'existingArrangement'>, Found | null>> = {
  none: byHand,
  freeLever: byHand,
  freeBar: byHand,
  doubleCylinder: byKeyInside,
  deadboltPlusLatch: byHand,
  padlock: byKeyInside,
  slideBolt: byHand,
  barricade: null,
  magnetNoSensor: { candidate: 'magnet/safe/buttonOnly', parts: loses },
  magnetAlarmOnly: { candidate: 'magnet/safe/alarmOnly', parts: [...loses, 'fireAlarmRelease'] },
  magnetFullSet: {
    candidate: 'magnet/safe/sensor',
    parts: [...loses, 'exitSensor', 'pushToExit', 'fireAlarmRelease', 'detectionRelease'],
  },
  failSafeStrike: { candidate: 'strikeMortise/safe/free' },
  cardToExit: { candidate: 'magnet/safe/credentialOut', parts: loses },
  buttonBeforeBar: { candidate: 'magnet/safe/buttonOnly', parts: loses },
  electricBolt: null,
  stairSideLocked: byHand,
};

function foundAt({ slots }: Decision): { candidate: Candidate; parts: ReadonlySet<ItemId> } | undefined {
  const found = valueIn(slots, 'existingArrangement');
  if (found === undefined) return undefined;
  const latch = valueIn(slots, 'latch');
  const bare = (bareLatches as readonly unknown[]).includes(latch);
  const told = standing[found];
  const candidate = candidateById(
    bare && told === byHand ? 'noLock/none/free' : (told?.candidate ?? 'not told'),
  );
  const bar = (barLatches as readonly unknown[]).includes(latch);
  return (
    candidate && {
      candidate,
      parts: new Set([...(told?.parts ?? []), ...(bar ? (['panicHardware'] as const) : [])]),
    }
  );
}

/**
 * What an opening does for the building: what is chosen there or, where nothing is wanted, what hangs there today. People
 * leave by a door that is left alone as by any other.
 */
export function standsAt(
  project: Project,
  opening: Opening,
  decision: Decision,
  batteryHours?: number | null,
): Simulated | undefined {
  const chosen = simulateOpening(project, opening, decision, batteryHours);
  if (chosen || !isLeftAlone(decision.slots)) return chosen;
  const found = foundAt(decision);
  if (!found) return undefined;
  const to = opening.toSpaceId === null ? undefined : project.spaces[opening.toSpaceId];
  const around: Surroundings = { toLevel: to?.securityLevel, batteryHours };
  const made = arrangementOf(found.candidate, found.parts, decision.slots, decision.basis, around);
  return { ...runArrangement(made), provisional: false };
}

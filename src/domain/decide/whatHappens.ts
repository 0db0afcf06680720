import { arrangedFacts, arrangementOf, type Surroundings } from '../arrangement/arrange.ts';
import type { Simulable } from '../arrangement/arrangement.ts';
import type { CodeBasis } from '../codes/basis.ts';
import { slotOf } from '../logic/slots.ts';
import type { Readable } from '../logic/condition.ts';
import type { Opening, Project } from '../model/project.ts';
import { type Ran, runArrangement } from '../simulate/simulate.ts';
import type { Recommending, Decision, SevereFinding } from './decision.ts';
import { itemsOf } from '../hardware/parts.ts';

/** One opening run through every condition, or the reason why it could not be. */
export interface Simulated extends Ran {
  /** Something unknown could still forbid this arrangement, or a person chose it against the engine. */
  readonly provisional: boolean;
}

/**
 * The arrangement behind a decision, or undefined where nothing was chosen. What a person put in its place counts
 * even where the engine refuses to decide: it is what would be built.
 */
export function arrange(decision: Decision, around: Surroundings = {}): Simulable | undefined {
  const candidate = decision.chosen?.candidate ?? decision.overridden ?? undefined;
  if (candidate === undefined) return undefined;
  return arrangementOf(candidate, itemsOf(decision), decision.slots, decision.basis, around);
}

/** What parts of the choice itself rest on, beside the facts of an arrangement; what rules ask for comes as bits. */
const partFacts = [
  'panicPresent',
  'workStatus',
  'isSwinging',
  'isPair',
] as const satisfies readonly Readable[];
const slotsRead = [...arrangedFacts, ...partFacts].map(slotOf);

const remembered = new WeakMap<CodeBasis, Map<string, readonly SevereFinding[]>>();
const mostRemembered = 20_000;
const none: readonly SevereFinding[] = [];

/**
 * What ends badly under an arrangement that is about to be recommended. Thousands of openings share few arrangements,
 * and each is run once: the key holds all that parts and arrangement can read, which a property test checks.
 */
export function severeOf(arranged: Recommending, basis: CodeBasis): readonly SevereFinding[] {
  const candidate = arranged.chosen?.candidate;
  if (!candidate) return none;
  const { slots, requires } = arranged;
  let brings = 0;
  for (let at = 0; at < requires.length; at++) brings |= requires[at]?.ready.brings ?? 0;
  let key = `${candidate.index},${brings}`;
  for (let at = 0; at < slotsRead.length; at++) key += `,${slots[slotsRead[at] as number]}`;
  let known = remembered.get(basis);
  if (!known) {
    known = new Map();
    remembered.set(basis, known);
  }
  let severe = known.get(key);
  if (!severe) {
    const { findings } = runArrangement(arrangementOf(candidate, itemsOf(arranged), slots, basis));
    severe = findings
      .filter((one) => one.severity === 'severe')
      .map(({ kind, says }) => ({ key: kind, says, from: 'opening' as const }));
    if (severe.length === 0) severe = none;
    if (known.size >= mostRemembered) known.clear();
    known.set(key, severe);
  }
  return severe;
}

/** Undefined where nothing is chosen: an opening that is refused, referred or left without a device is not run. */
export function simulate(decision: Decision, around: Surroundings = {}): Simulated | undefined {
  const found = arrange(decision, around);
  return found && { ...runArrangement(found), provisional: decision.state !== 'settled' };
}

export function simulateOpening(
  project: Project,
  opening: Opening,
  decision: Decision,
  batteryHours?: number | null,
): Simulated | undefined {
  const to = opening.toSpaceId === null ? undefined : project.spaces[opening.toSpaceId];
  return simulate(decision, { toLevel: to?.securityLevel, batteryHours });
}

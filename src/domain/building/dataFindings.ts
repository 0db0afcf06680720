import type { Opening } from '../model/project.ts';
import { compareMarks } from '../model/project.ts';
import { publicSpaces, rankOf } from './exposure.ts';
import type { BuildingFinding, BuildingFindingKind } from './finding.ts';
import { type Edge, factOf, isOccupied, type Plan } from './plan.ts';
import { contradictionsElsewhere } from './planContradictions.ts';
import { says } from './sentences.ts';
import type { DoorCapacity } from './width.ts';

/** What the survey leaves out or says twice: told, never guessed around. */
export function dataFindings(plan: Plan, capacities: readonly DoorCapacity[]): readonly BuildingFinding[] {
  const one = (
    kind: BuildingFindingKind,
    severity: BuildingFinding['severity'],
    sentence: string,
    openings: readonly Opening[] = [],
    spaceId: string | null = null,
  ): BuildingFinding => ({
    kind,
    severity,
    conditions: [],
    spaceId,
    openingIds: openings.map((opening) => opening.id),
    path: [],
    closing: null,
    says: sentence,
  });
  const marks = (openings: readonly Opening[]) =>
    openings.map((opening) => opening.mark).toSorted(compareMarks);
  const found: BuildingFinding[] = [];
  if (plan.spaces.length > 0 && plan.outside.length === 0) {
    found.push(one('noOutside', 'serious', says.noOutside));
  }
  if (plan.spaces.length > 0 && publicSpaces(plan).length === 0) {
    found.push(one('noPublic', 'serious', says.noPublic));
  }
  plan.spaces.forEach((space, index) => {
    if (space.kind !== 'outside' || space.publicWay !== null) return;
    const gates = plan.edges.filter((edge) => edge.to === index && isGate(edge)).map((edge) => edge.opening);
    const sentence = says.publicWayAsked(space.name, marks(gates));
    found.push(one('publicWayAsked', gates.length > 0 ? 'serious' : 'note', sentence, gates, space.id));
  });
  plan.spaces.forEach((space, index) => {
    if (plan.first[index] !== plan.first[index + 1] || space.kind === 'outside') return;
    found.push(
      one('noDoors', isOccupied(plan, index) ? 'serious' : 'note', says.noDoors(space.name), [], space.id),
    );
  });
  for (const opening of plan.oneSided) {
    found.push(one('oneSided', 'serious', says.oneSided(opening.mark), [opening]));
  }
  for (const opening of plan.sameSpace) {
    found.push(one('sameSpace', 'note', says.sameSpace(opening.mark), [opening]));
  }
  found.push(...contradictionsElsewhere(plan));
  const undecided = plan.edges.filter((edge) => !edge.simulated).map((edge) => edge.opening);
  if (undecided.length > 0) {
    found.push(one('undecided', 'note', says.undecided(marks(undecided)), undecided));
  }
  const noLevel = plan.spaces.filter((space, index) => space.kind !== 'outside' && rankOf(plan, index) < 0);
  if (noLevel.length > 0) found.push(one('noLevel', 'note', says.noLevel(noLevel.length)));
  const noWidth = plan.edges.filter((_edge, index) => !capacities[index]?.known).map((edge) => edge.opening);
  if (noWidth.length > 0) found.push(one('noWidth', 'note', says.noWidth(marks(noWidth)), noWidth));
  return found;
}

/** An opening that people leave an outdoor space by. */
function isGate(edge: Edge): boolean {
  const type = factOf(edge, 'doorType');
  const role = factOf(edge, 'egressRole');
  return type === 'gateSwing' || type === 'gateSlide' || role === 'dischargeGate' || role === 'egressCourt';
}

import type { ConditionId } from '../simulate/conditions.ts';
import { bySeverity, type Severity } from '../simulate/outcome.ts';
import type { BuildingState } from './building.ts';
import { closings, hoursUntilOpen, rankOf, wayIn } from './exposure.ts';
import type { BuildingFinding } from './finding.ts';
import { idsOf, marksOf } from './gather.ts';
import { otherEnd } from './leave.ts';
import type { Plan } from './plan.ts';
import { levelInWords, says } from './sentences.ts';

const [GENERAL, STAFF, RESTRICTED] = [1, 2, 3];

/** One way into one space, with every condition in which it stands open. */
interface Exposure {
  readonly space: number;
  readonly way: readonly number[];
  readonly conditions: ConditionId[];
  readonly severities: Severity[];
  readonly close: readonly number[] | null;
  hours: number | null | undefined;
}

/** Nothing secure opens: what a person without a credential reaches, in every condition. */
export function exposureFindings(plan: Plan, states: readonly BuildingState[]): readonly BuildingFinding[] {
  const normal = states.find((one) => one.conditions.includes('lockedHours'));
  const found = new Map<string, Exposure>();
  for (const { passages, reached, conditions } of states) {
    const closing = closings(plan, passages);
    for (let space = 0; space < plan.spaces.length; space++) {
      const rank = rankOf(plan, space);
      if (!reached.reached[space] || rank < GENERAL) continue;
      const told = conditions.flatMap((id) => {
        const severity = severityOf(rank, id, normal?.reached.reached[space] === 1);
        return severity ? [{ id, severity }] : [];
      });
      if (told.length === 0) continue;
      const way = wayIn(plan, reached, space);
      const close = rank >= STAFF ? closing(space) : undefined;
      const closed = close?.possible ? close.edges : null;
      const key = `${space}:${way.join()}:${closed?.join()}`;
      const exposure: Exposure = found.get(key) ?? {
        space,
        way,
        conditions: [],
        severities: [],
        close: closed,
        hours: undefined,
      };
      found.set(key, exposure);
      for (const { id, severity } of told) {
        exposure.conditions.push(id);
        exposure.severities.push(severity);
        if (id === 'batterySpent') exposure.hours = hoursUntilOpen(plan, way, id);
      }
    }
  }
  return [...found.values()].map((exposure) => findingOf(plan, exposure));
}

function findingOf(plan: Plan, exposure: Exposure): BuildingFinding {
  const { space: index, way, close, conditions, severities, hours } = exposure;
  const space = plan.spaces[index];
  const start = way.toReversed().reduce((node, edge) => otherEnd(plan, edge, node), index);
  const worst = severities.toSorted((a, b) => bySeverity({ severity: a }, { severity: b }))[0] ?? 'note';
  return {
    kind: 'exposed',
    severity: worst,
    conditions,
    spaceId: space?.id ?? null,
    openingIds: idsOf(plan, way),
    path: idsOf(plan, way),
    closing: close && idsOf(plan, close),
    says: says.exposed(
      space?.name ?? '',
      levelInWords(space?.securityLevel ?? null),
      plan.spaces[start]?.name ?? '',
      marksOf(plan, way),
      hours,
    ),
  };
}

/** Open now is worse than open once something fails; what clock or command unlock is meant to be. */
function severityOf(rank: number, id: ConditionId, openInLockedHours: boolean): Severity | undefined {
  if (rank >= RESTRICTED) {
    if (id === 'lockedHours' || id === 'unlockedHours') return 'severe';
    return id === 'releaseCommand' ? 'note' : 'serious';
  }
  if (id === 'unlockedHours') return undefined;
  // General spaces are open to everybody by day; told only where a failure opens them.
  if (rank === GENERAL) return openInLockedHours ? undefined : 'note';
  return id === 'lockedHours' ? 'serious' : 'note';
}

import { fillSentence } from '../text/format.ts';
import type { Opening, Space } from '../model/project.ts';
import type { BuildingFinding } from './finding.ts';
import { isComputed, type Plan } from './plan.ts';

/** What the rule says at the opening, to be said at the space as well: a contradiction has two places. */
const ruleId = 'B-95';
/** A lobby is contradicted by a door on either side of it. */
const aboutLobby = 'e';
/** The space says this by itself, with both figures. */
const saidBySpace = 'g';

interface Contradiction {
  readonly opening: Opening;
  readonly space: Space | undefined;
  readonly says: string;
}

const remembered = new WeakMap<Plan, readonly Contradiction[]>();

/** Where plan and survey disagree, in the very words in which the opening says it. */
function contradictionsOf(plan: Plan): readonly Contradiction[] {
  const before = remembered.get(plan);
  if (before) return before;
  const isLobby = (node: number) => ['lobby', 'elevator'].includes(plan.spaces[node]?.kind ?? '');
  const found = plan.edges.flatMap(({ opening, decision, from, to }): readonly Contradiction[] => {
    if (!decision) return [];
    return decision.findings.flatMap(({ rule, clause, sure }) => {
      if (rule.id !== ruleId || clause.key === saidBySpace || !sure) return [];
      const node = (clause.key === aboutLobby ? [to, from].find(isLobby) : undefined) ?? to;
      const space = plan.spaces[node] ?? plan.spaces[from];
      return [{ opening, space, says: `${opening.mark}: ${fillSentence(clause.says, decision.slots)}` }];
    });
  });
  remembered.set(plan, found);
  return found;
}

function asFinding({ opening, space, says }: Contradiction): BuildingFinding {
  return {
    kind: 'planDiffers',
    severity: 'serious',
    conditions: [],
    spaceId: space?.id ?? null,
    openingIds: [opening.id],
    path: [],
    closing: null,
    says,
    ruleId,
  };
}

/** Those that stand with the loads and exits of a space. */
export function contradictionsAt(plan: Plan, space: Space): readonly BuildingFinding[] {
  return contradictionsOf(plan)
    .filter((one) => one.space?.id === space.id)
    .map(asFinding);
}

/** Those of spaces that have no line among loads and exits. */
export function contradictionsElsewhere(plan: Plan): readonly BuildingFinding[] {
  return contradictionsOf(plan)
    .filter((one) => !one.space || !isComputed(one.space))
    .map(asFinding);
}

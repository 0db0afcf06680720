import type { Plan } from '../../domain/building/plan.ts';

/** One floor as it is drawn: its openings, and the spaces they join, stairs and street among them. */
export interface FloorGraph {
  readonly id: string;
  readonly name: string;
  /** Indexes into the plan. */
  readonly edges: readonly number[];
  readonly spaces: readonly number[];
}

/** Floors from the lowest up; what belongs to none comes last. Openings are drawn on the floor they stand on. */
export function floorGraphs(plan: Plan): readonly FloorGraph[] {
  const floors = Object.values(plan.project.floors).toSorted((a, b) => a.level - b.level);
  const byFloor = new Map<string, { edges: number[]; spaces: Set<number> }>(
    [...floors.map((floor) => floor.id), ''].map((id) => [id, { edges: [], spaces: new Set<number>() }]),
  );
  const floorOf = (id: string | null | undefined) => (id && byFloor.has(id) ? id : undefined);
  plan.edges.forEach(({ opening, from, to }, index) => {
    const spaceFloor = (node: number) => floorOf(plan.spaces[node]?.floorId);
    const floor = byFloor.get(floorOf(opening.floorId) ?? spaceFloor(to) ?? spaceFloor(from) ?? '');
    floor?.edges.push(index);
    for (const node of [from, to]) if (node !== plan.nowhere) floor?.spaces.add(node);
  });
  plan.spaces.forEach((space, index) => {
    if ([...byFloor.values()].some((floor) => floor.spaces.has(index))) return;
    byFloor.get(floorOf(space.floorId) ?? '')?.spaces.add(index);
  });
  return [...byFloor].flatMap(([id, { edges, spaces }]) =>
    edges.length === 0 && spaces.size === 0
      ? []
      : [
          {
            id,
            name: floors.find((floor) => floor.id === id)?.name ?? 'On no floor',
            edges,
            spaces: [...spaces],
          },
        ],
  );
}

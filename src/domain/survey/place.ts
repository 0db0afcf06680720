import type { Opening, Project } from '../model/project.ts';

/** Where an opening is, in one line: floor, and the space it leads from and to. */
export function placeOf(project: Pick<Project, 'floors' | 'spaces'>, opening: Opening): string {
  const space = (id: string | null) => (id === null ? undefined : project.spaces[id]?.name);
  const floor = opening.floorId === null ? undefined : project.floors[opening.floorId]?.name;
  const ways = [space(opening.fromSpaceId), space(opening.toSpaceId)].filter(Boolean).join(' → ');
  return [floor, ways].filter(Boolean).join(' · ') || 'No place stated';
}

import { linkTo } from '../../app/addresses.ts';
import { spacesAroundFor } from '../../app/buildings.ts';
import { doorOfSpaceInWords } from '../../domain/building/egressSentences.ts';
import { neededInWords } from '../../domain/egress/exitsNeeded.ts';
import type { Opening, Project } from '../../domain/model/project.ts';

/** Spaces this door is a way out of, each a link to its loads and exits; nothing where there is none. */
export function SpacesLeft({ project, opening }: { project: Project; opening: Opening }) {
  const spaces = spacesAroundFor(project, opening).flatMap((egress) => {
    const way = egress.ways.find((one) => one.opening.id === opening.id && one.standing !== 'no');
    return way ? [{ egress, way }] : [];
  });
  if (spaces.length === 0) return null;
  return (
    <section className="section stack stack-tight" aria-label="Loads and exits">
      <h3>Loads and exits</h3>
      {spaces.map(({ egress: { space, load, needed, judged }, way }) => (
        <p key={space.id}>
          {doorOfSpaceInWords(
            space.name,
            load.people,
            judged ? neededInWords(needed) : 'not judged for a corridor',
            way.capacity.known ? way.capacity.people : null,
          )}{' '}
          <a href={linkTo('building', space.id)}>Loads and exits of {space.name}</a>
        </p>
      ))}
    </section>
  );
}

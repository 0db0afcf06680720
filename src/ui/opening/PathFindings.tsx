import { pathFindingsUntilWalked } from '../../app/buildings.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { linesAbout } from '../../exporting/sheets/buildingLines.ts';
import { OpeningLinks } from '../parts/OpeningLinks.tsx';
import { useDecisions } from '../useDecisions.ts';
import { ReasonsInFull } from '../review/ReasonsInFull.tsx';

/** Rules along the way out that name this opening; nothing where there are none. */
export function PathFindings({ project, opening }: { project: Project; opening: Opening }) {
  // They look at every opening of the building, and whoever types here must not wait for that: drawn again once walked.
  useDecisions();
  const lines = linesAbout(project, pathFindingsUntilWalked(project), opening.id);
  if (lines.length === 0) return null;
  return (
    <section className="section stack stack-tight" aria-label="Along the egress path">
      <h3>Along the egress path</h3>
      {lines.map((line) => (
        <div key={line.id} className="stack stack-tight">
          <ReasonsInFull reasons={[line.reason]} />
          <OpeningLinks openings={line.openings.filter((one) => one.id !== opening.id)} />
        </div>
      ))}
    </section>
  );
}

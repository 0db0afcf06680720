import { useState } from 'react';
import type { BuildingLine } from '../../exporting/sheets/buildingLines.ts';
import { StatusMark } from '../face/Mark.tsx';
import { OpeningLinks } from '../parts/OpeningLinks.tsx';
import { ReasonsInFull } from './ReasonsInFull.tsx';

const atOnce = 20;

/** What needs a name and is no single opening. It is signed on the printed register; nothing is filed here. */
export function BuildingLines({ lines }: { lines: readonly BuildingLine[] }) {
  const [shown, setShown] = useState(atOnce);
  if (lines.length === 0) return null;
  return (
    <article className="review-entry stack stack-tight" aria-label="About the building">
      <div className="row row-baseline review-entry-head">
        <h2>About the building</h2>
        <p>Along the egress path, across more than one opening. Signed on the printed register.</p>
        <div className="row row-end">
          <StatusMark status="needsSignOff">{lines[0]?.reason.gradeWord}</StatusMark>
        </div>
      </div>
      {lines.slice(0, shown).map((line) => (
        <div key={line.id} className="stack stack-tight">
          <ReasonsInFull reasons={[line.reason]} />
          <OpeningLinks openings={line.openings} />
        </div>
      ))}
      {shown < lines.length && (
        <button type="button" className="button" onClick={() => setShown(shown + atOnce)}>
          Show more ({lines.length - shown} left)
        </button>
      )}
    </article>
  );
}

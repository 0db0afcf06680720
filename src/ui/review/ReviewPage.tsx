import { useMemo, useState } from 'react';
import { pathFindingsFor, decisionsInBuilding } from '../../app/buildings.ts';
import { standingCaution } from '../../domain/text/cautions.ts';
import { buildingLines } from '../../exporting/sheets/buildingLines.ts';
import {
  isListed,
  isRegisterFilter,
  type RegisterFilter,
  registerFilters,
  registerInWords,
  reviewRegister,
} from '../../exporting/sheets/reviewRegister.ts';
import { useApp } from '../context.ts';
import { BuildingLines } from './BuildingLines.tsx';
import { ReviewEntry } from './ReviewEntry.tsx';
import './review.css';

/** The openings that need a reviewer's name, the gravest first, with everything a reviewer has to read. */
export default function ReviewPage() {
  const project = useApp((state) => state.document.project);
  const [filter, setFilter] = useState<RegisterFilter>('all');
  const [kept, setKept] = useState<ReadonlySet<string>>(new Set());
  const entries = useMemo(() => reviewRegister(project, decisionsInBuilding(project)), [project]);
  const building = useMemo(() => buildingLines(project, pathFindingsFor(project)), [project]);
  // No mark can be put on file for them, so they wait.
  const listedLines = isListed('open', filter) ? building : [];
  const any = entries.length + building.length > 0;
  const listed = entries.filter(
    (entry) => isListed(entry.status.state, filter) || kept.has(entry.opening.id),
  );
  const narrow = (to: RegisterFilter) => {
    // What is signed now stays in the list until it is asked for anew, or it would vanish under the reader's hands.
    setKept(
      new Set(entries.filter((entry) => isListed(entry.status.state, to)).map((entry) => entry.opening.id)),
    );
    setFilter(to);
  };
  return (
    <div className="sheet">
      <div className="sheet-body stack">
        <h1>Review</h1>
        <p role="status">{registerInWords(entries, building.length)}</p>
        {any && (
          <div className="toolbar">
            <select
              className="input"
              aria-label="Show"
              value={filter}
              onChange={(event) => isRegisterFilter(event.target.value) && narrow(event.target.value)}
            >
              {Object.entries(registerFilters).map(([value, name]) => (
                <option key={value} value={value}>
                  {name}
                </option>
              ))}
            </select>
            <a className="button button-quiet toolbar-end" href="#/print">
              Print the register
            </a>
          </div>
        )}
        <BuildingLines lines={listedLines} />
        {listed.map((entry) => (
          <ReviewEntry key={entry.opening.id} entry={entry} />
        ))}
        {any && listed.length + listedLines.length === 0 && <p className="empty">None is in this state.</p>}
        <p className="caution">{standingCaution}</p>
      </div>
    </div>
  );
}

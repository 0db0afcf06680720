import { useState } from 'react';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { rememberLast } from '../../app/rememberLast.ts';
import { powerFor } from '../../app/power.ts';
import type { Project } from '../../domain/model/project.ts';
import { setWirings } from '../../exporting/sheets/wiringSheet.ts';
import { DrawingView } from '../face/DrawingView.tsx';

const wiringsOf = rememberLast((project: Project) =>
  setWirings(project, decisionsInBuilding(project), powerFor(project), { width: 5, reduced: 1 }),
);

/** One drawing for each hardware set, the first unfolded. */
export function Wirings({ project }: { project: Project }) {
  const sets = wiringsOf(project);
  const [id, setId] = useState('');
  const shown = sets.find((one) => one.id === id) ?? sets[0];
  if (!shown) return <p className="note">No lock of this project hangs on a wire yet.</p>;
  return (
    <div className="stack">
      <select
        className="input"
        aria-label="Hardware set to draw"
        value={shown.id}
        onChange={(event) => setId(event.target.value)}
      >
        {sets.map((one) => (
          <option key={one.id} value={one.id}>
            {one.id}: {one.title}
          </option>
        ))}
      </select>
      <p className="note">
        {shown.marks} · {shown.closets}
      </p>
      <div className="power-wiring">
        <DrawingView drawing={shown.drawing} />
      </div>
    </div>
  );
}

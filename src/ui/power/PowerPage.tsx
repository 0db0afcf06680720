import { useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import { rememberLast } from '../../app/rememberLast.ts';
import { powerFor } from '../../app/power.ts';
import type { Project } from '../../domain/model/project.ts';
import { assignByTool } from '../../domain/power/assign.ts';
import { powerPictures } from '../../exporting/drawing/power-kinds.ts';
import { powerSheet } from '../../exporting/sheets/powerSheet.ts';
import { useApp } from '../context.ts';
import { DrawingView } from '../face/DrawingView.tsx';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { useCommand } from '../project/useCommand.ts';
import { Closets } from './Closets.tsx';
import { PowerFindings } from './PowerFindings.tsx';
import { ProductBook } from './ProductBook.tsx';
import { Runs } from './Runs.tsx';
import { Takeoff } from './Takeoff.tsx';
import { Wirings } from './Wirings.tsx';
import './power.css';

const sheetOf = rememberLast((project: Project) => powerSheet(project, powerFor(project)));

/** What feeds each lock: closets, supplies, runs, batteries, and what of it is ordered. */
export default function PowerPage() {
  const project = useApp((state) => state.document.project);
  const plan = powerFor(project);
  const sheet = sheetOf(project);
  const parts = [
    { name: 'What was found', part: <PowerFindings findings={sheet.findings} /> },
    {
      name: 'Closets and supplies',
      part: <Closets key={project.id} project={project} parts={sheet.closets} />,
    },
    { name: 'Load, drop and riser', part: <Pictures project={project} /> },
    { name: 'Runs', part: <Runs key={project.id} project={project} parts={sheet.closets} /> },
    { name: 'Wiring by hardware set', part: <Wirings key={project.id} project={project} /> },
    { name: 'Takeoff', part: <Takeoff sheet={sheet} /> },
    { name: 'Product book', part: <ProductBook key={project.id} project={project} /> },
  ];
  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack stack-wide">
        <div className="stack stack-tight">
          <h1>Power and cable</h1>
          <p className="note">{sheet.says}.</p>
        </div>
        <Assign project={project} demands={plan.openings.map(({ demand }) => demand)} />
        {parts.map(({ name, part }) => (
          <section key={name} className="section stack" aria-label={name}>
            <h2>{name}</h2>
            <ErrorPanel name={name}>{part}</ErrorPanel>
          </section>
        ))}
        {sheet.notes.map((note) => (
          <p key={note} className="note">
            {note}
          </p>
        ))}
      </div>
    </div>
  );
}

interface AssignProps {
  readonly project: Project;
  readonly demands: Parameters<typeof assignByTool>[1];
}

function Assign({ project, demands }: AssignProps) {
  const command = useCommand();
  const [told, setTold] = useState('');
  const assign = () => {
    const assigned = assignByTool(project, demands, randomIds);
    const refused =
      assigned.edits.length === 0 ? undefined : command('Assign openings to supplies', assigned.edits);
    setTold(refused ?? assigned.says);
  };
  return (
    <div className="row">
      <button type="button" className="button button-main" onClick={assign}>
        Assign what has no supply
      </button>
      <output>{told}</output>
    </div>
  );
}

function Pictures({ project }: { project: Project }) {
  const drawings = powerPictures(project, powerFor(project));
  if (drawings.length === 0)
    return <p className="note">Nothing to draw before a closet or a run is known.</p>;
  return (
    <div className="power-pictures">
      {drawings.map((drawing) => (
        <DrawingView key={drawing.title} drawing={drawing} />
      ))}
    </div>
  );
}

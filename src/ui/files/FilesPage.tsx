import { useState } from 'react';
import { useApp } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { Backups } from './Backups.tsx';
import { CopyAndOpen } from './CopyAndOpen.tsx';
import { ExportTables } from './ExportTables.tsx';
import { ImportSchedule } from './ImportSchedule.tsx';
import { History } from './History.tsx';
import { OpenDifferences } from './OpenDifferences.tsx';
import { Projects } from './Projects.tsx';
import './files.css';

/** All that goes in and out: the projects of this browser, files, tables, backups, and what was done. */
export default function FilesPage() {
  const id = useApp((state) => state.document.project.id);
  // What the storage holds changed; every list that shows it asks again.
  const [changes, setChanges] = useState(0);
  const changed = () => setChanges((before) => before + 1);
  const parts = [
    { name: 'Projects in this browser', part: <Projects key={id} changes={changes} onChanged={changed} /> },
    { name: 'Project file', part: <CopyAndOpen /> },
    { name: 'Differences between copies', part: <OpenDifferences key={id} /> },
    { name: 'Import a door schedule', part: <ImportSchedule key={id} /> },
    { name: 'Export tables', part: <ExportTables key={id} /> },
    { name: 'Backups', part: <Backups key={id} changes={changes} onChanged={changed} /> },
    { name: 'History', part: <History key={id} /> },
  ];
  return (
    <div className="sheet">
      <div className="sheet-body stack stack-wide">
        <div className="stack stack-tight">
          <h1>Files</h1>
          <p className="lead">Everything stays in this browser until you save a copy.</p>
        </div>
        {parts.map(({ name, part }) => (
          <section key={name} className="section stack" aria-label={name}>
            <h2>{name}</h2>
            <ErrorPanel name={name}>{part}</ErrorPanel>
          </section>
        ))}
      </div>
    </div>
  );
}

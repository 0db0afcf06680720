import { useState } from 'react';
import { buildingFindingsFor, decideAhead, decisionsInBuilding } from '../../app/buildings.ts';
import { orderedOpenings } from '../../app/order.ts';
import { dayOf } from '../../app/today.ts';
import { billOf } from '../../domain/bid/bill.ts';
import { standingOf } from '../../domain/bid/openQuestions.ts';
import type { Project } from '../../domain/model/project.ts';
import { openingLines } from '../../domain/sets/openingLines.ts';
import { scheduleRows } from '../../domain/schedules/openings.ts';
import { hardwareSets } from '../../domain/sets/sets.ts';
import { sharedEquipment } from '../../domain/sets/shared.ts';
import { coverSheet } from '../../exporting/sheets/coverSheet.ts';
import { draftOf } from '../../exporting/sheets/stamp.ts';
import { factsCsv } from '../../exporting/csv/factsCsv.ts';
import { scheduleCsv } from '../../exporting/csv/scheduleCsv.ts';
import { openingLinesCsv, setsCsv } from '../../exporting/csv/setsCsv.ts';
import { decisionsFile, decisionsText } from '../../exporting/jsonl/decisionsFile.ts';
import { projectParts } from '../../exporting/xlsx/projectParts.ts';
import { workbookOf } from '../../exporting/xlsx/workbook.ts';
import { useApp, useApplication } from '../context.ts';
import { downloadBytes, downloadText, fileName } from './download.ts';
import { ProgressBar } from './ProgressBar.tsx';
import { useSteps } from './useSteps.ts';

const kinds = { CSV: 'text/csv;charset=utf-8', JSON: 'application/json' } as const;

const tables: readonly {
  readonly name: string;
  readonly file: string;
  readonly says: string;
  readonly kind: keyof typeof kinds;
  readonly text: (project: Project) => string;
}[] = [
  {
    name: 'Opening schedule',
    file: 'openings.csv',
    kind: 'CSV',
    says: 'One row per opening with what was decided, as it is printed.',
    text: (project) => scheduleCsv(scheduleRows(project, decisionsInBuilding(project))),
  },
  {
    name: 'Hardware sets',
    file: 'hardware sets.csv',
    kind: 'CSV',
    says: 'One row per item of each set, with quantities and marks; shared equipment at the end.',
    text: (project) => {
      const decisions = decisionsInBuilding(project);
      return setsCsv(hardwareSets(project, decisions), sharedEquipment(project, decisions));
    },
  },
  {
    name: 'Hardware by opening',
    file: 'hardware by opening.csv',
    kind: 'CSV',
    says: 'One row per item of each opening; its pieces add up to those of the sets.',
    text: (project) => {
      const decisions = decisionsInBuilding(project);
      return openingLinesCsv(openingLines(project, decisions, hardwareSets(project, decisions)));
    },
  },
  {
    name: 'Survey',
    file: 'survey.csv',
    kind: 'CSV',
    says: 'Every fact as entered, with its standing. It can be imported again.',
    text: (project) => factsCsv(project),
  },
  {
    name: 'Decisions for other programs',
    file: 'decisions.json',
    kind: 'JSON',
    says: 'Each opening with its decision, rules and signatures, then building findings and power. Its schema is in docs/spec.',
    text: (project) =>
      decisionsText(decisionsFile(project, decisionsInBuilding(project), buildingFindingsFor(project))),
  },
];

export function ExportTables() {
  const project = useApp((state) => state.document.project);
  const app = useApplication();
  const { progress, run, stop } = useSteps();
  const [done, setDone] = useState('');
  const save = async (table: (typeof tables)[number]) => {
    setDone('');
    // Decided one by one first, so that a large building shows its progress and can be stopped.
    const all = await run(orderedOpenings(project), (opening) => decideAhead(project, opening));
    if (!all) return setDone('Stopped. Nothing was written.');
    const name = fileName(project.name, table.file);
    downloadText(name, table.text(project), kinds[table.kind]);
    setDone(`${name} was handed to the browser to save.`);
  };
  const saveBook = async (priced: boolean) => {
    setDone('');
    const all = await run(orderedOpenings(project), (opening) => decideAhead(project, opening));
    if (!all) return setDone('Stopped. Nothing was written.');
    const decisions = decisionsInBuilding(project);
    const bill = billOf(project, decisions);
    const stamp = draftOf(dayOf(app.clock()), standingOf(project, decisions).says);
    const cover = coverSheet(project, decisions, bill, stamp, new Set());
    const bytes = await workbookOf(projectParts(project, decisions, bill, cover, priced));
    const name = fileName(project.name, priced ? 'priced bid.xlsx' : 'bid.xlsx');
    downloadBytes(name, bytes);
    setDone(`${name} was handed to the browser to save.`);
  };
  return (
    <div className="stack">
      <div className="row">
        <button
          type="button"
          className="button"
          disabled={progress !== null}
          onClick={() => void saveBook(false)}
        >
          Save workbook for bidders (no prices)
        </button>
        <button
          type="button"
          className="button"
          disabled={progress !== null}
          onClick={() => void saveBook(true)}
        >
          Save workbook with prices
        </button>
      </div>
      <ul className="file-list">
        {tables.map((table) => (
          <li key={table.name}>
            <div>
              <strong>{table.name}</strong>
              <p className="note">{table.says}</p>
            </div>
            <button
              type="button"
              className="button"
              disabled={progress !== null}
              onClick={() => void save(table)}
            >
              <span>
                Save <span className="visually-hidden">{table.name}</span> as {table.kind}
              </span>
            </button>
          </li>
        ))}
      </ul>
      {progress && <ProgressBar what="Deciding openings" progress={progress} onStop={stop} />}
      <output>{done}</output>
    </div>
  );
}

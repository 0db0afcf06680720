import { useId, useMemo, useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import { decisionFor } from '../../app/decisions.ts';
import { orderedOpenings } from '../../app/derive.ts';
import { importEdits, importRows } from '../../domain/import/csv.ts';
import { findHeader } from '../../domain/import/headers.ts';
import { broughtIn, importLabel } from '../../domain/project/importPreview.ts';
import { readCsv } from '../../exporting/csv/readCsv.ts';
import { useApp, useStore } from '../context.ts';
import { ImportPreview } from './ImportPreview.tsx';
import { ProgressBar } from './ProgressBar.tsx';
import { readText } from './readText.ts';
import { useSteps } from './useSteps.ts';

/** A door schedule → a preview of what is understood → one command. Nothing is stored before that. */
export function ImportSchedule() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const id = useId();
  const [source, setSource] = useState({ text: '', name: '', note: '' });
  const [pasted, setPasted] = useState('');
  const [problem, setProblem] = useState('');
  const [done, setDone] = useState('');
  const { progress, run, stop } = useSteps();

  const read = useMemo(() => {
    if (source.text === '') return undefined;
    const csv = readCsv(source.text);
    if (!csv.ok) return csv;
    const at = findHeader(csv.table);
    const header = at === undefined ? undefined : csv.table[at];
    if (at === undefined || header === undefined) {
      return {
        ok: false as const,
        says: 'None of the first rows names the openings; one column must be headed “mark” or “Door No.”.',
      };
    }
    const rows = csv.table.slice(at + 1);
    return {
      ok: true as const,
      header,
      imported: importRows(header, rows, { newId: randomIds, firstRow: at + 2, into: project }),
    };
  }, [source, project]);

  const take = (text: string, name: string, note = '') => {
    setProblem('');
    setDone('');
    setSource({ text, name, note });
  };
  const choose = async (file: File | undefined) => {
    if (!file) return;
    const answer = await readText(file);
    if (!answer.ok) {
      take('', '');
      return setProblem(answer.says);
    }
    if (answer.text.trim() === '') setProblem('The file is empty.');
    take(answer.text, file.name, answer.note);
  };
  const bringIn = async () => {
    if (!read?.ok) return;
    const { imported } = read;
    const result = store
      .getState()
      .dispatch(importLabel(imported, source.name), importEdits(project, imported));
    if (!result.ok) return setProblem(result.says);
    take('', '');
    setPasted('');
    setDone(broughtIn(imported));
    // Decided here, where it shows, and not when the schedule is opened.
    const now = store.getState().document.project;
    await run(orderedOpenings(now), (opening) => void decisionFor(now, opening));
  };

  return (
    <div className="stack">
      <div className="columns columns-even">
        <div className="field">
          <label htmlFor={`${id}file`}>Schedule as CSV</label>
          <input
            id={`${id}file`}
            type="file"
            className="input file-input"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            aria-describedby={`${id}help`}
            onChange={(event) => {
              void choose(event.target.files?.[0]);
              event.target.value = '';
            }}
          />
          <p id={`${id}help`} className="field-help">
            Headings of architects and our own keys are understood; inches, feet and millimetres are read. You
            see what was understood before anything is stored.
          </p>
        </div>
        <div className="field">
          <label htmlFor={`${id}paste`}>Or paste rows with their heading</label>
          <textarea
            id={`${id}paste`}
            className="input"
            rows={4}
            value={pasted}
            onChange={(event) => setPasted(event.target.value)}
          />
          <div className="row">
            <button
              type="button"
              className="button button-small"
              disabled={pasted.trim() === ''}
              onClick={() => take(pasted, 'pasted rows')}
            >
              Look at these rows
            </button>
          </div>
        </div>
      </div>
      {[problem, read && !read.ok ? read.says : '']
        .filter((says) => says !== '')
        .map((says) => (
          <p key={says} role="alert" className="field-error">
            {says}
          </p>
        ))}
      {source.note !== '' && <p className="remark">{source.note}</p>}
      {read?.ok && (
        <ImportPreview
          name={source.name}
          header={read.header}
          imported={read.imported}
          onBringIn={() => void bringIn()}
          onCancel={() => take('', '')}
        />
      )}
      {progress && <ProgressBar what="Deciding the openings" progress={progress} onStop={stop} />}
      <output>
        {done} {done !== '' && <a href="#/schedule">To the schedule</a>}
      </output>
    </div>
  );
}

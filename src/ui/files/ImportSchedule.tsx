import { linkTo } from '../../app/addresses.ts';
import { useId, useMemo, useState } from 'react';
import { randomIds } from '../../app/clock.ts';
import { decideAhead } from '../../app/buildings.ts';
import { orderedOpenings } from '../../app/order.ts';
import { compareAgain, importEdits, isFirst, usualChoices } from '../../domain/import/again.ts';
import { importTable } from '../../domain/import/csv.ts';
import type { Grid } from '../../domain/import/grid.ts';
import { mappingFrom, mappingKey } from '../../domain/import/headers.ts';
import { bestTable } from '../../domain/import/sheets.ts';
import { mappingsOf } from '../../domain/project/standardHelp.ts';
import { broughtIn, importLabel } from '../../domain/project/importPreview.ts';
import { readSchedule, type ReadSchedule, readScheduleText } from '../../intake/readFile.ts';
import { useApp, useApplication, useStore } from '../context.ts';
import { DraftNote } from '../parts/DraftNote.tsx';
import { useDraft } from '../parts/useDraft.ts';
import { ImportPreview } from './ImportPreview.tsx';
import { ProgressBar } from './ProgressBar.tsx';
import { useModelReader } from './useModelReader.ts';
import { useSteps } from './useSteps.ts';

interface Source {
  readonly grids: readonly Grid[];
  readonly name: string;
  readonly note: string;
}
const nothing: Source = { grids: [], name: '', note: '' };

/** A door schedule → a preview of what is understood → one command. Nothing is stored before that. */
export function ImportSchedule() {
  const store = useStore();
  const project = useApp((state) => state.document.project);
  const id = useId();
  const app = useApplication();
  const [source, setSource] = useState<Source>(nothing);
  const [byHand, setByHand] = useState(() => mappingFrom(app.preferences.get('columnsByHand')));
  const [words, setWords] = useState(() => mappingFrom(app.preferences.get('wordsByHand')));
  const [rows, setRows] = useState<ReadonlyMap<number, 'opening' | 'omit'>>(new Map());
  const [sheet, setSheet] = useState<string>();
  const pasted = useDraft<string>(
    { place: 'import/pasted', label: 'Pasted rows', href: linkTo('files') },
    '',
  );
  const [choices, setChoices] = useState(usualChoices);
  const [problem, setProblem] = useState('');
  const [done, setDone] = useState('');
  const { progress, run, stop } = useSteps();
  const model = useModelReader();

  const mappings = useMemo(() => mappingsOf(project), [project]);
  const allWords = useMemo(() => ({ ...mappings.words, ...words }), [mappings, words]);
  const read = useMemo(() => {
    if (source.grids.length === 0) return undefined;
    const found = bestTable(source.grids, sheet);
    if (!found.ok) return found;
    const columns = { ...mappings.columns, ...byHand };
    const options = { newId: randomIds, into: project, columns, rows, words: allWords };
    const imported = importTable(found.table, options);
    const again = isFirst(imported) ? undefined : compareAgain(project, imported);
    return { ...found, imported, again };
  }, [source, sheet, project, mappings, byHand, rows, allWords]);

  const take = (answer: ReadSchedule | undefined, name: string) => {
    setDone('');
    setRows(new Map());
    setSheet(undefined);
    setChoices(usualChoices);
    setProblem(answer?.ok === false ? answer.says : '');
    setSource(answer?.ok ? { grids: answer.grids, name, note: answer.note } : nothing);
  };
  const choose = async (file: File | undefined) => {
    if (!file) return;
    take(undefined, '');
    try {
      take(await readSchedule(new Uint8Array(await file.arrayBuffer()), model.read), file.name);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      take({ ok: false, says: `The file could not be read from the disk (${why}).` }, '');
    }
  };
  const takeColumn = (header: string, use: string) => {
    const mapping = { ...byHand, [mappingKey(header)]: use };
    setByHand(mapping);
    app.preferences.set('columnsByHand', JSON.stringify(mapping));
  };
  const takeWord = (key: string, minutes: string) => {
    const chosen = { ...words, [key]: minutes };
    setWords(chosen);
    app.preferences.set('wordsByHand', JSON.stringify(chosen));
  };
  const bringIn = async () => {
    if (!read?.ok) return;
    const { imported } = read;
    const kept = await app.copyBeforeList();
    if (!kept.ok) return setProblem(kept.says);
    const result = store
      .getState()
      .dispatch(importLabel(imported, source.name), importEdits(project, imported, choices));
    if (!result.ok) return setProblem(result.says);
    take(undefined, '');
    pasted.done();
    setDone(broughtIn(imported));
    // Decided here, where it shows, and not when the schedule is opened.
    const now = store.getState().document.project;
    await run(orderedOpenings(now), (opening) => decideAhead(now, opening));
  };

  return (
    <div className="stack">
      <div className="columns columns-even">
        <div className="field">
          <label htmlFor={`${id}file`}>Schedule or building model</label>
          <input
            id={`${id}file`}
            type="file"
            className="input file-input"
            accept=".csv,.tsv,.txt,.xlsx,.ifc,.ifczip,text/csv,text/plain"
            aria-describedby={`${id}help`}
            onChange={(event) => {
              void choose(event.target.files?.[0]);
              event.target.value = '';
            }}
          />
          <p id={`${id}help`} className="field-help">
            CSV, workbook (also COBie) or IFC. Architects’ column headings and our own keys are recognized;
            inches, feet and millimeters are read. You see how it was read before anything is stored.
          </p>
        </div>
        <div className="field">
          <label htmlFor={`${id}paste`}>Or paste rows with their heading</label>
          <textarea
            id={`${id}paste`}
            className="input"
            rows={4}
            value={pasted.value}
            readOnly={pasted.isReadOnly}
            onChange={(event) => pasted.type(event.target.value)}
          />
          <DraftNote draft={pasted} />
          <div className="row">
            <button
              type="button"
              className="button button-small"
              disabled={pasted.value.trim() === ''}
              onClick={() => take(readScheduleText(pasted.value), 'pasted rows')}
            >
              Check these rows
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
      {model.progress && (
        <ProgressBar
          what="Reading the building model"
          progress={model.progress}
          inPercent
          onStop={model.stop}
        />
      )}
      {source.note !== '' && <p className="remark">{source.note}</p>}
      {source.grids.length > 1 && (
        <label className="field" htmlFor={`${id}sheet`}>
          <span className="field-label">Sheet</span>
          <select
            id={`${id}sheet`}
            className="input"
            value={sheet ?? (read?.ok ? read.sheet : '')}
            onChange={(event) => setSheet(event.target.value)}
          >
            {source.grids.map((grid) => (
              <option key={grid.name} value={grid.name}>
                {grid.name}
                {grid.hidden ? ' (hidden)' : ''}
              </option>
            ))}
          </select>
        </label>
      )}
      {read?.ok && (
        <ImportPreview
          name={source.name}
          header={read.table.header}
          imported={read.imported}
          onBringIn={() => void bringIn()}
          onCancel={() => take(undefined, '')}
          again={read.again}
          choices={choices}
          onChoices={setChoices}
          notes={read.notes}
          onColumn={takeColumn}
          words={allWords}
          onWord={takeWord}
          onRow={(row, as) => setRows(new Map(rows).set(row, as))}
        />
      )}
      {progress && <ProgressBar what="Deciding the openings" progress={progress} onStop={stop} />}
      <output>
        {done} {done !== '' && <a href={linkTo('schedule')}>To the schedule</a>}
      </output>
    </div>
  );
}

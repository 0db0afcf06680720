import { useDeferredValue, useMemo, useState } from 'react';
import { routeOf } from '../../app/addresses.ts';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { standingOf } from '../../domain/bid/openQuestions.ts';
import { itemsOf, sheetData } from '../../app/sheetData.ts';
import { dayOf } from '../../app/today.ts';
import type { AddendumSheet } from '../../exporting/sheets/addendumSheet.ts';
import { pageRules } from '../../exporting/sheets/pageRules.ts';
import { partsOf, type PrintPart } from '../../exporting/sheets/parts.ts';
import { type PaperSize, type SheetId, sheetIds, usualSheets } from '../../exporting/sheets/sheetKinds.ts';
import { useApp, useApplication } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { Scroller } from '../parts/Scroller.tsx';
import { useShown } from '../schedule/useShown.ts';
import { Editions, type Frozen } from './Editions.tsx';
import { LetterForm } from './LetterForm.tsx';
import { useOfferedLetter } from './useOfferedLetter.ts';
import { FewerSets } from './FewerSets.tsx';
import { PrintButtons } from './PrintButtons.tsx';
import { PrintChoices } from './PrintChoices.tsx';
import { SetNumbers } from './SetNumbers.tsx';
import { Sheets } from './Sheets.tsx';
import { usePrintRun } from './usePrintRun.ts';
import './sheets.css';
import './running.css';
import './packet.css';

/** One sheet by its name in the address: the Review page sends its reader here for the packet. */
function askedFor(address: string): ReadonlySet<SheetId> | undefined {
  const found = sheetIds.find((id) => id === routeOf(address).name);
  return found && new Set([found]);
}

/** The same each time, so that nothing is drawn anew. */
const noPart: PrintPart = [];

export default function PrintPage() {
  const { clock } = useApplication();
  const current = useApp((state) => state.document.project);
  const otherBasis = useApp((state) => state.session.otherBasis);
  const [sheets, setSheets] = useState(
    () => askedFor(location.hash) ?? usualSheets(Object.keys(current.plans).length > 0),
  );
  const [paper, setPaper] = useState<PaperSize>('tabloid');
  const [addendum, setAddendum] = useState<AddendumSheet | null>(null);
  const [frozen, setFrozen] = useState<Frozen | null>(null);
  const [day] = useState(() => dayOf(clock()));
  // Ticking answers at once; laying out hundreds of sheets follows when there is time.
  const wanted = useDeferredValue(sheets);
  // Paper waits for the building: nothing goes out that is still being checked.
  const project = frozen?.project ?? current;
  const offered = useOfferedLetter(project);
  const decisions = decisionsInBuilding(project);
  const stamp = useMemo(
    () => ({ day, issued: frozen?.edition ?? null, standing: standingOf(project, decisions).says }),
    [project, decisions, frozen, day],
  );
  const walked = useMemo(() => ({ decisions, checking: false }), [decisions]);
  const { shown, says, showAll } = useShown(project, walked);
  const openings = useMemo(() => shown.left.map(({ opening }) => opening), [shown]);
  const data = useMemo(
    () => sheetData(project, decisions, openings, stamp),
    [project, decisions, openings, stamp],
  );
  const parts = useMemo(() => {
    if (decisions.size === 0) return [];
    const chosen = sheetIds.filter((id) => wanted.has(id));
    return partsOf(
      chosen.map((id) => ({ id, items: itemsOf(id, data, openings.length, addendum !== null) })),
    );
  }, [wanted, data, decisions, openings, addendum]);
  const run = usePrintRun(parts);
  const of = parts.length > 1 ? `Part ${run.at + 1} of ${parts.length}` : '';
  return (
    <div className="print-page">
      <style>{pageRules(project, stamp, paper, of)}</style>
      <PrintChoices
        sheets={sheets}
        onSheets={setSheets}
        paper={paper}
        onPaper={setPaper}
        shown={openings.length}
        says={says}
        onShowAll={showAll}
        total={decisions.size}
        busy={run.running}
        printing={<PrintButtons parts={parts} run={run} ready={wanted === sheets} />}
      >
        {!frozen && (
          <>
            <SetNumbers project={project} decisions={decisions} />
            <FewerSets project={project} />
          </>
        )}
        <Editions
          project={current}
          standing={stamp.standing}
          frozen={frozen}
          onFrozen={setFrozen}
          onAddendum={setAddendum}
        />
        {wanted.has('packet') && !frozen && <LetterForm project={current} offered={offered} />}
      </PrintChoices>
      <Scroller className="print-preview" label="Preview" busy={run.running}>
        <ErrorPanel name="The preview">
          <Sheets
            project={project}
            decisions={decisions}
            data={data}
            shown={openings}
            sheets={wanted}
            part={parts[run.at] ?? noPart}
            paper={paper}
            stamp={stamp}
            otherBasis={otherBasis}
            addendum={addendum}
            letter={project.letter === '' ? offered : project.letter}
          />
        </ErrorPanel>
      </Scroller>
    </div>
  );
}

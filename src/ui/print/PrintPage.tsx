import { useDeferredValue, useMemo, useState } from 'react';
import { decisionsInBuilding } from '../../app/buildings.ts';
import { standingOf } from '../../domain/bid/openQuestions.ts';
import { dayOf } from '../../app/today.ts';
import type { AddendumSheet } from '../../exporting/sheets/addendumSheet.ts';
import { pageRules } from '../../exporting/sheets/pageRules.ts';
import { isPerOpening, type PaperSize, type SheetId, sheetIds } from '../../exporting/sheets/sheetNames.ts';
import { useApp, useApplication } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { Scroller } from '../parts/Scroller.tsx';
import { useShown } from '../schedule/useShown.ts';
import { Editions, type Frozen } from './Editions.tsx';
import { LetterForm } from './LetterForm.tsx';
import { useOfferedLetter } from './useOfferedLetter.ts';
import { FewerSets } from './FewerSets.tsx';
import { PrintChoices } from './PrintChoices.tsx';
import { SetNumbers } from './SetNumbers.tsx';
import { Sheets } from './Sheets.tsx';
import './sheets.css';
import './running.css';
import './packet.css';

/**
 * Sheets per opening and sequences are left out at first: of a large building they are most of the paper. Loads and
 * exits and another basis are for a reviewer and no part of what goes out to be priced, and a priced bill is for nobody
 * but its owner.
 */
const usual: ReadonlySet<SheetId> = new Set(
  sheetIds.filter(
    (id) =>
      !isPerOpening(id) &&
      id !== 'sequence' &&
      id !== 'loads' &&
      id !== 'basis' &&
      id !== 'bill' &&
      id !== 'packet' &&
      id !== 'plans',
  ),
);

/** A floor that has a drawing is known by it on site. */
const withPlans: ReadonlySet<SheetId> = new Set([...usual, 'plans']);

/** One sheet by its name in the address: the Review page sends its reader here for the packet. */
function askedFor(address: string): ReadonlySet<SheetId> | undefined {
  const only = /[?]only=(\w+)$/.exec(address)?.[1];
  const found = sheetIds.find((id) => id === only);
  return found && new Set([found]);
}

export default function PrintPage() {
  const { clock } = useApplication();
  const current = useApp((state) => state.document.project);
  const otherBasis = useApp((state) => state.session.otherBasis);
  const [sheets, setSheets] = useState(
    () => askedFor(location.hash) ?? (Object.keys(current.plans).length > 0 ? withPlans : usual),
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
  return (
    <div className="print-page">
      <style>{pageRules(project, stamp, paper)}</style>
      <PrintChoices
        sheets={sheets}
        onSheets={setSheets}
        paper={paper}
        onPaper={setPaper}
        shown={openings.length}
        says={says}
        onShowAll={showAll}
        total={decisions.size}
        ready={wanted === sheets}
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
      <Scroller className="print-preview" label="Preview">
        <ErrorPanel name="The preview">
          <Sheets
            project={project}
            decisions={decisions}
            shown={openings}
            sheets={wanted}
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

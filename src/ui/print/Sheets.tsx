import { memo, useMemo } from 'react';
import { buildingFindingsFor, pathFindingsFor, spaceEgressFor } from '../../app/buildings.ts';
import { reportFor } from '../../app/reports.ts';
import { powerFor } from '../../app/power.ts';
import { questionsFor } from '../../app/review.ts';
import { counted } from '../../domain/text/counted.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { compareProject, otherBasisOf, type OtherBasisChoice } from '../../domain/schedules/otherBasis.ts';
import { type Decisions, scheduleRows } from '../../domain/schedules/openings.ts';
import { billOf } from '../../domain/bid/bill.ts';
import type { AddendumSheet } from '../../exporting/sheets/addendumSheet.ts';
import { billSheet } from '../../exporting/sheets/billSheet.ts';
import { coverSheet } from '../../exporting/sheets/coverSheet.ts';
import { buildingLines } from '../../exporting/sheets/buildingLines.ts';
import { diagramSheet } from '../../exporting/sheets/diagramSheet.ts';
import { scheduleSheet } from '../../exporting/sheets/doorSchedule.ts';
import { findingsSheet } from '../../exporting/sheets/findingsSheet.ts';
import { legendSheet } from '../../exporting/sheets/legendSheet.ts';
import { loadsSheet } from '../../exporting/sheets/loadsSheet.ts';
import { openingSheet } from '../../exporting/sheets/openingSheet.ts';
import { packetSheet } from '../../exporting/sheets/packetSheet.ts';
import { planSheet } from '../../exporting/sheets/planSheet.ts';
import { powerPaper } from '../../exporting/sheets/powerPaper.ts';
import { registerInWords, reviewRegister } from '../../exporting/sheets/reviewRegister.ts';
import { sequencePages } from '../../exporting/sheets/sequencePages.ts';
import { setSheet } from '../../exporting/sheets/setSheet.ts';
import type { PaperSize, SheetId } from '../../exporting/sheets/sheetNames.ts';
import { testPages } from '../../exporting/sheets/testPages.ts';
import type { Stamp } from '../../exporting/sheets/stamp.ts';
import { holds, titleBlock } from '../../exporting/sheets/titleBlock.ts';
import { basisSheet } from '../../exporting/sheets/basisSheet.ts';
import { Legend } from '../face/Legend.tsx';
import { BasisTable } from './BasisTable.tsx';
import { AddendumTable } from './AddendumTable.tsx';
import { BillTable } from './BillTable.tsx';
import { Cover } from './Cover.tsx';
import { BuildingFindings } from './BuildingFindings.tsx';
import { DiagramSheets } from './DiagramSheets.tsx';
import { DoorSchedule } from './DoorSchedule.tsx';
import { PaperNotes } from './Grouped.tsx';
import { HardwareSets } from './HardwareSets.tsx';
import { LoadsAndExits } from './LoadsAndExits.tsx';
import { OpeningSheets } from './OpeningSheets.tsx';
import { PacketSheets } from './PacketSheets.tsx';
import { Paper } from './Paper.tsx';
import { ReviewRegister } from './ReviewRegister.tsx';
import { PlanSheets } from './PlanSheets.tsx';
import { PowerSheets } from './PowerSheets.tsx';
import { SequenceSheets } from './SequenceSheets.tsx';
import { TestSheets } from './TestSheets.tsx';

interface Props {
  readonly project: Project;
  readonly decisions: Decisions;
  readonly shown: readonly Opening[];
  readonly sheets: ReadonlySet<SheetId>;
  readonly paper: PaperSize;
  readonly stamp: Stamp;
  readonly otherBasis: OtherBasisChoice | null;
  readonly addendum: AddendumSheet | null;
  /** To the authority, as it was edited. */
  readonly letter: string;
}

/** All sheets that were asked for, in the order in which they are bound. Drawn again only when one of them changed. */
export const Sheets = memo(function Sheets(props: Props) {
  if (props.decisions.size === 0) return <p className="empty">There are no openings to print yet.</p>;
  return (
    <>
      {props.sheets.has('cover') && <CoverPart {...props} />}
      {props.sheets.has('addendum') && props.addendum && (
        <AddendumPart {...props} addendum={props.addendum} />
      )}
      {props.sheets.has('schedule') && <SchedulePart {...props} />}
      {props.sheets.has('sets') && <SetsPart {...props} />}
      {props.sheets.has('quantities') && <BillPart {...props} priced={false} />}
      {props.sheets.has('bill') && <BillPart {...props} priced />}
      {props.sheets.has('sequence') && <SequencePart {...props} />}
      {props.sheets.has('openings') && props.shown.length > 0 && <OpeningsPart {...props} />}
      {props.sheets.has('diagrams') && props.shown.length > 0 && <DiagramsPart {...props} />}
      {props.sheets.has('power') && <PowerPart {...props} />}
      {props.sheets.has('tests') && props.shown.length > 0 && <TestsPart {...props} />}
      {props.sheets.has('register') && <RegisterPart {...props} />}
      {props.sheets.has('packet') && <PacketPart {...props} />}
      {props.sheets.has('findings') && <FindingsPart {...props} />}
      {props.sheets.has('loads') && <LoadsPart {...props} />}
      {props.sheets.has('basis') && <BasisPart {...props} />}
      {props.sheets.has('plans') && <PlansPart {...props} />}
      {props.sheets.has('legend') && <LegendPart {...props} />}
    </>
  );
});

function LegendPart({ project, decisions, paper, stamp }: Props) {
  const sheet = useMemo(() => legendSheet(decisions), [decisions]);
  return (
    <Paper id="legend" paper={paper} title={titleBlock(project, 'legend', stamp)}>
      <Legend only={sheet.groups} />
      <dl className="legend-words">
        {sheet.words.map(([word, means]) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{means}</dd>
          </div>
        ))}
      </dl>
    </Paper>
  );
}

function CoverPart({ project, decisions, paper, stamp, sheets, addendum }: Props) {
  const bill = useMemo(() => billOf(project, decisions), [project, decisions]);
  const bound = new Set([...sheets].filter((id) => id !== 'addendum' || addendum !== null));
  const sheet = coverSheet(project, decisions, bill, stamp, bound);
  return (
    <Paper id="cover" paper={paper} title={titleBlock(project, 'cover', stamp)}>
      <Cover sheet={sheet} />
    </Paper>
  );
}

function AddendumPart({ project, paper, stamp, addendum }: Props & { readonly addendum: AddendumSheet }) {
  return (
    <Paper id="addendum" paper={paper} title={titleBlock(project, 'addendum', stamp)}>
      <AddendumTable sheet={addendum} />
    </Paper>
  );
}

function BillPart({ project, decisions, paper, stamp, priced }: Props & { readonly priced: boolean }) {
  const bill = useMemo(() => billOf(project, decisions), [project, decisions]);
  const sheet = billSheet(project, bill, [], priced);
  const id = priced ? 'bill' : 'quantities';
  return (
    <Paper id={id} paper={paper} title={titleBlock(project, id, stamp, holds(sheet.says))}>
      <BillTable sheet={sheet} />
    </Paper>
  );
}

function SchedulePart({ project, decisions, paper, stamp }: Props) {
  const sheet = useMemo(() => scheduleSheet(project, decisions), [project, decisions]);
  return (
    <Paper id="schedule" paper={paper} title={titleBlock(project, 'schedule', stamp, holds(sheet.says))}>
      <DoorSchedule sheet={sheet} />
    </Paper>
  );
}

function SetsPart({ project, decisions, paper, stamp }: Props) {
  const sheet = useMemo(() => setSheet(project, decisions), [project, decisions]);
  return (
    <Paper id="sets" paper={paper} title={titleBlock(project, 'sets', stamp, holds(sheet.says))}>
      <HardwareSets sheet={sheet} />
    </Paper>
  );
}

function OpeningsPart({ project, decisions, shown, paper, stamp }: Props) {
  const sheets = useMemo(() => {
    const rows = new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]));
    return shown.flatMap((opening) => {
      const [row, decision] = [rows.get(opening.id), decisions.get(opening.id)];
      return row && decision
        ? [openingSheet(project, opening, row, decision, reportFor(decision), stamp)]
        : [];
    });
  }, [project, decisions, shown, stamp]);
  return (
    <Paper id="openings" paper={paper}>
      <OpeningSheets sheets={sheets} />
    </Paper>
  );
}

function SequencePart({ project, decisions, paper, stamp }: Props) {
  const pages = useMemo(() => sequencePages(project, decisions), [project, decisions]);
  return (
    <Paper id="sequence" paper={paper} title={titleBlock(project, 'sequence', stamp, holds(pages.says))}>
      <SequenceSheets pages={pages} />
    </Paper>
  );
}

function DiagramsPart({ project, decisions, shown, paper, stamp }: Props) {
  const sheet = useMemo(() => diagramSheet(project, decisions, shown), [project, decisions, shown]);
  return (
    <Paper id="diagrams" paper={paper} title={titleBlock(project, 'diagrams', stamp, holds(sheet.says))}>
      <DiagramSheets sheet={sheet} />
    </Paper>
  );
}

function PowerPart({ project, decisions, paper, stamp }: Props) {
  const sheet = useMemo(() => powerPaper(project, decisions, powerFor(project)), [project, decisions]);
  return (
    <Paper id="power" paper={paper} title={titleBlock(project, 'power', stamp, holds(sheet.says))}>
      <PowerSheets sheet={sheet} />
    </Paper>
  );
}

function TestsPart({ project, decisions, shown, paper, stamp }: Props) {
  const pages = useMemo(
    () => testPages(project, decisions, shown, stamp),
    [project, decisions, shown, stamp],
  );
  return (
    <Paper id="tests" paper={paper}>
      <TestSheets pages={pages} />
    </Paper>
  );
}

function RegisterPart({ project, decisions, paper, stamp }: Props) {
  const entries = useMemo(() => reviewRegister(project, decisions), [project, decisions]);
  const building = useMemo(() => buildingLines(project, pathFindingsFor(project)), [project]);
  const says = counted(entries.length, 'opening');
  return (
    <Paper id="register" paper={paper} title={titleBlock(project, 'register', stamp, holds(says))}>
      <ReviewRegister
        entries={entries}
        building={building}
        says={registerInWords(entries, building.length)}
      />
    </Paper>
  );
}

function PacketPart({ project, letter, paper, stamp }: Props) {
  const questions = questionsFor(project);
  const sheet = useMemo(() => packetSheet(project, questions, reportFor), [project, questions]);
  return (
    <Paper id="packet" paper={paper} title={titleBlock(project, 'packet', stamp, holds(sheet.says))}>
      <PacketSheets sheet={sheet} letter={letter} />
    </Paper>
  );
}

function PlansPart({ project, decisions, paper, stamp }: Props) {
  const sheet = useMemo(() => planSheet(project, decisions), [project, decisions]);
  return (
    <Paper id="plans" paper={paper} title={titleBlock(project, 'plans', stamp, holds(sheet.says))}>
      <PlanSheets sheet={sheet} />
    </Paper>
  );
}

function FindingsPart({ project, paper, stamp }: Props) {
  const sheet = useMemo(() => findingsSheet(project, buildingFindingsFor(project)), [project]);
  return (
    <Paper id="findings" paper={paper} title={titleBlock(project, 'findings', stamp, holds(sheet.says))}>
      <BuildingFindings sheet={sheet} />
    </Paper>
  );
}

function LoadsPart({ project, paper, stamp }: Props) {
  const sheet = useMemo(() => loadsSheet(project, spaceEgressFor(project)), [project]);
  return (
    <Paper id="loads" paper={paper} title={titleBlock(project, 'loads', stamp, holds(sheet.says))}>
      <LoadsAndExits sheet={sheet} />
    </Paper>
  );
}

function BasisPart({ project, decisions, otherBasis, paper, stamp }: Props) {
  const sheet = useMemo(() => {
    if (!otherBasis) return null;
    const other = otherBasisOf(project, otherBasis);
    return basisSheet(project, other, compareProject(project, other, decisions));
  }, [project, decisions, otherBasis]);
  return (
    <Paper id="basis" paper={paper} title={titleBlock(project, 'basis', stamp)}>
      {sheet ? (
        <>
          <p className="lead">{sheet.says}</p>
          {sheet.groups.length > 0 && <BasisTable sheet={sheet} />}
          <PaperNotes notes={sheet.notes} />
        </>
      ) : (
        <p className="lead">No other basis is chosen yet. Choose one on the Project page.</p>
      )}
    </Paper>
  );
}

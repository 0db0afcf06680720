import { useMemo } from 'react';
import { compareProject, otherBasisOf } from '../../domain/schedules/otherBasis.ts';
import { basisSheet } from '../../exporting/sheets/basisSheet.ts';
import { coverSheet } from '../../exporting/sheets/coverSheet.ts';
import { legendSheet } from '../../exporting/sheets/legendSheet.ts';
import { planSheet } from '../../exporting/sheets/planSheet.ts';
import { Legend } from '../face/Legend.tsx';
import { BasisTable } from './BasisTable.tsx';
import { AddendumTable } from './AddendumTable.tsx';
import { Cover } from './Cover.tsx';
import { PaperNotes } from './Grouped.tsx';
import { Paper } from './Paper.tsx';
import { PlanSheets } from './PlanSheets.tsx';
import { type OfPiece, titleOf } from './sheetProps.ts';

export function CoverPart(props: OfPiece) {
  const { project, decisions, data, paper, stamp, sheets: chosen, addendum } = props;
  const bound = new Set([...chosen].filter((id) => id !== 'addendum' || addendum !== null));
  const sheet = coverSheet(project, decisions, data.bill(), stamp, bound);
  return (
    <Paper id="cover" paper={paper} title={titleOf(props)}>
      <Cover sheet={sheet} />
    </Paper>
  );
}

export function AddendumPart(props: OfPiece) {
  const { paper, addendum } = props;
  if (!addendum) return null;
  return (
    <Paper id="addendum" paper={paper} title={titleOf(props)}>
      <AddendumTable sheet={addendum} />
    </Paper>
  );
}

export function BasisPart(props: OfPiece) {
  const { project, decisions, otherBasis, paper } = props;
  const sheet = useMemo(() => {
    if (!otherBasis) return null;
    const other = otherBasisOf(project, otherBasis);
    return basisSheet(project, other, compareProject(project, other, decisions));
  }, [project, decisions, otherBasis]);
  return (
    <Paper id="basis" paper={paper} title={titleOf(props)}>
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

export function PlansPart(props: OfPiece) {
  const { project, decisions, paper } = props;
  const sheet = useMemo(() => planSheet(project, decisions), [project, decisions]);
  return (
    <Paper id="plans" paper={paper} title={titleOf(props, sheet.says)}>
      <PlanSheets sheet={sheet} />
    </Paper>
  );
}

export function LegendPart(props: OfPiece) {
  const { decisions, paper } = props;
  const sheet = useMemo(() => legendSheet(decisions), [decisions]);
  return (
    <Paper id="legend" paper={paper} title={titleOf(props)}>
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

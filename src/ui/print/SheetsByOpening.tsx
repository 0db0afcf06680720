import { useMemo } from 'react';
import { reportFor } from '../../app/reports.ts';
import { diagramSheet } from '../../exporting/sheets/diagramSheet.ts';
import { openingSheet } from '../../exporting/sheets/openingSheet.ts';
import { DiagramSheets } from './DiagramSheets.tsx';
import { OpeningSheets } from './OpeningSheets.tsx';
import { Paper } from './Paper.tsx';
import { TestSheets } from './TestSheets.tsx';
import { type OfPiece, titleOf } from './sheetProps.ts';

export function OpeningsPart(props: OfPiece) {
  const { project, decisions, data, shown, paper, stamp, piece } = props;
  const all = useMemo(() => {
    const rows = data.rows();
    return shown.slice(piece.from, piece.to).flatMap((opening) => {
      const [row, decision] = [rows.get(opening.id), decisions.get(opening.id)];
      return row && decision
        ? [openingSheet(project, opening, row, decision, reportFor(decision), stamp)]
        : [];
    });
  }, [project, decisions, data, shown, piece, stamp]);
  return (
    <Paper id="openings" paper={paper}>
      <OpeningSheets sheets={all} />
    </Paper>
  );
}

export function DiagramsPart(props: OfPiece) {
  const { project, decisions, shown, paper, piece } = props;
  const sheet = useMemo(
    () => diagramSheet(project, decisions, shown.slice(piece.from, piece.to)),
    [project, decisions, shown, piece],
  );
  return (
    <Paper id="diagrams" paper={paper} title={titleOf(props, sheet.says)}>
      <DiagramSheets sheet={sheet} />
    </Paper>
  );
}

export function TestsPart({ data, paper, piece }: OfPiece) {
  return (
    <Paper id="tests" paper={paper}>
      <TestSheets papers={data.tests().slice(piece.from, piece.to)} />
    </Paper>
  );
}

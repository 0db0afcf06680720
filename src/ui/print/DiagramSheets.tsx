import type { DiagramSheet } from '../../exporting/sheets/diagramSheet.ts';
import { Drawn } from './Drawn.tsx';

/** Circuits side by side, each kept whole under the mark of its opening. */
export function DiagramSheets({ sheet }: { sheet: DiagramSheet }) {
  if (sheet.entries.length === 0) {
    return <p>None of these openings has a wired lock, or none is chosen yet.</p>;
  }
  return (
    <div className="diagrams">
      {sheet.entries.map((entry) => (
        <article key={entry.id} aria-label={entry.mark}>
          <header>
            <h3 className="mark">{entry.mark}</h3>
            <p>{entry.place}</p>
            <p className="test-arrangement">{entry.arrangement}</p>
          </header>
          <Drawn drawings={entry.drawings} />
        </article>
      ))}
    </div>
  );
}

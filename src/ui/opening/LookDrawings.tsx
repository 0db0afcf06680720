import type { DrawingOfLook } from '../../domain/survey/lookDrawings.ts';
import { lookDrawings } from '../../exporting/drawing/look-drawings.ts';
import { SymbolDrawing } from '../face/Symbol.tsx';

/** What to look at, each drawing with its word and its measure. */
export function LookDrawings({ of }: { of: DrawingOfLook | undefined }) {
  if (of === undefined) return null;
  return (
    <ul className="look-drawings">
      {lookDrawings[of].map((symbol) => (
        <li key={symbol.word}>
          <SymbolDrawing symbol={symbol} large />
          <span>
            <strong>{symbol.word}</strong> <span className="note">{symbol.meaning}</span>
          </span>
        </li>
      ))}
    </ul>
  );
}

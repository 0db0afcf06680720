import { type FaceSymbol, symbolDash, symbolGrid, symbolWidths } from '../../exporting/drawing/symbol.ts';

/**
 * Only the drawing, hidden from assistive technology: whoever uses it must set the word beside it. Screens
 * use the marks of Mark.tsx, which do.
 */
export function SymbolDrawing({ symbol, large = false }: { symbol: FaceSymbol; large?: boolean }) {
  return (
    <svg
      className={large ? 'symbol symbol-large' : 'symbol'}
      viewBox={`0 0 ${symbolGrid} ${symbolGrid}`}
      fill="none"
      stroke="currentColor"
      aria-hidden="true"
      focusable="false"
    >
      {symbol.strokes.map((stroke) =>
        stroke.solid ? (
          <path key={stroke.d} d={stroke.d} fill="currentColor" fillRule="evenodd" stroke="none" />
        ) : (
          <path
            key={stroke.d}
            d={stroke.d}
            strokeWidth={symbolWidths[stroke.weight ?? 'usual']}
            {...(stroke.dashed ? { strokeDasharray: symbolDash } : {})}
          />
        ),
      )}
    </svg>
  );
}

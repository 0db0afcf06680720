/**
 * One stroke of a symbol on a grid of 24. `solid` areas are inked in (even-odd, so an inner loop is a hole);
 * everything else is a line. Only ink: a symbol must survive a photocopier.
 */
export interface SymbolStroke {
  readonly d: string;
  readonly solid?: true;
  readonly weight?: 'thin' | 'heavy';
  readonly dashed?: true;
}

export interface FaceSymbol {
  /** The word that always stands beside the symbol, unless that word is already there. */
  readonly word: string;
  /** For the legend: what the drawing shows. */
  readonly meaning: string;
  readonly strokes: readonly SymbolStroke[];
}

export const symbolGrid = 24;
/** Line widths on the grid; at 16 px the usual line is still more than one pixel wide. */
export const symbolWidths = { thin: 1.25, usual: 1.75, heavy: 2.75 } as const;
export const symbolDash = '2.5 2';

export const line = (d: string): SymbolStroke => ({ d });
export const thin = (d: string): SymbolStroke => ({ d, weight: 'thin' });
export const heavy = (d: string): SymbolStroke => ({ d, weight: 'heavy' });
export const solid = (d: string): SymbolStroke => ({ d, solid: true });
export const dashed = (d: string): SymbolStroke => ({ d, dashed: true });

/** A full circle as a path, because print and screen share paths only. */
export const ring = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;

/** The architect's scales, largest first: lettering and inches of the real thing per inch of paper. */
const scales = [
  { text: `1/2" = 1'-0"`, ratio: 24 },
  { text: `3/8" = 1'-0"`, ratio: 32 },
  { text: `1/4" = 1'-0"`, ratio: 48 },
  { text: `3/16" = 1'-0"`, ratio: 64 },
  { text: `1/8" = 1'-0"`, ratio: 96 },
  { text: `3/32" = 1'-0"`, ratio: 128 },
  { text: `1/16" = 1'-0"`, ratio: 192 },
] as const;

export interface DrawingSize {
  /** Inches on paper. On screen the whole drawing is stretched to the width there is. */
  readonly width: number;
  readonly height: number;
  /** Words beside the drawing, numbers that a list explains, or no lettering at all. */
  readonly labels: 'words' | 'numbers' | 'none';
}

export const drawingSizes = {
  sheet: { width: 5, height: 5.5, labels: 'words' },
  sheetPlan: { width: 5, height: 4.2, labels: 'words' },
  phone: { width: 3.8, height: 5.5, labels: 'numbers' },
  phonePlan: { width: 3.8, height: 4.2, labels: 'numbers' },
  thumb: { width: 1.2, height: 1.6, labels: 'none' },
} as const satisfies Record<string, DrawingSize>;

/** Height of letters on paper, inches. */
export const letterHeight = 0.17;
export const lineHeight = letterHeight * 1.2;
const labelColumn = 1.5;
const numberColumn = 0.4;

/** What is kept free around the object, in inches of paper. */
export function margins(size: DrawingSize): { left: number; right: number; bottom: number; top: number } {
  if (size.labels === 'none') return { left: 0.06, right: 0.06, top: 0.06, bottom: 0.06 };
  const right = size.labels === 'words' ? labelColumn : numberColumn;
  return { left: 0.72, right, top: 0.1, bottom: 1.24 };
}

/** The largest usual scale at which an object of this size fits between the margins. */
export function chooseScale(
  size: DrawingSize,
  width: number,
  height: number,
): { ratio: number; text?: string } {
  const keep = margins(size);
  const [across, down] = [size.width - keep.left - keep.right, size.height - keep.top - keep.bottom];
  const needed = Math.max(width / across, height / down);
  if (size.labels === 'none') return { ratio: needed };
  return scales.find((scale) => scale.ratio >= needed) ?? { ratio: needed, text: 'Not to scale' };
}

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

const noScale = 'Not to scale';

/** Letters of the longest that can stand under a drawing. */
export const longestScale = Math.max(noScale.length, ...scales.map(({ text }) => text.length));

export interface DrawingSize {
  /** Inches on paper. On screen the whole drawing is stretched to the width there is. */
  readonly width: number;
  readonly height: number;
  /** Words beside the drawing, numbers that a list explains, or no lettering at all. */
  readonly labels: 'words' | 'numbers' | 'none';
  /** Inches of the real thing per inch of paper that its neighbor has: this one is drawn no larger. */
  readonly ratio?: number;
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
const labelColumn = 1.4;
const numberColumn = 0.4;
const dimensionColumn = 0.74;

/** Free at the foot for the dimension, before the caption begins. */
export const footing = 0.54;

export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * What is kept free around the object, in inches of paper. Labels stand on the side where the lock is, so
 * that their leaders do not cross the leaf; dimensions stand on the other.
 */
export function margins(size: DrawingSize, labelSide: 1 | -1, captionLines: number): Margins {
  if (size.labels === 'none') return { left: 0.06, right: 0.06, top: 0.06, bottom: 0.06 };
  const labels = labelColumnOf(size);
  const bottom = footing + captionLines * lineHeight + 0.06;
  return {
    left: labelSide === 1 ? dimensionColumn : labels,
    right: labelSide === 1 ? labels : dimensionColumn,
    top: 0.1,
    bottom,
  };
}

export function labelColumnOf(size: DrawingSize): number {
  return size.labels === 'words' ? labelColumn : numberColumn;
}

/**
 * Width of an object with the wall beside it. The wall is measured in inches of the real thing, and on a
 * small scale in inches of paper, because readers and buttons are then set larger than life.
 */
export function withWalls(size: DrawingSize, keep: Margins, width: number): number {
  const across = size.width - keep.left - keep.right;
  const inReal = width + wallAt.lock + wallAt.other;
  if (size.labels === 'none') return inReal;
  return Math.max(inReal, (width * across) / (across - onPaper.lock - onPaper.other));
}

const wallAt = { lock: 10, other: 4 } as const;
const onPaper = { lock: 0.3, other: 0.06 } as const;

/** Where an object begins when it and its wall are set in the middle between the margins. */
export function leftEnd(
  size: DrawingSize,
  keep: Margins,
  ratio: number,
  width: number,
  lockSide: 1 | -1,
): number {
  const lettered = size.labels !== 'none';
  const lock = lettered ? Math.max(wallAt.lock, onPaper.lock * ratio) : wallAt.lock;
  const other = lettered ? Math.max(wallAt.other, onPaper.other * ratio) : wallAt.other;
  const across = (size.width - keep.left - keep.right) * ratio;
  return keep.left * ratio + (across - width - lock - other) / 2 + (lockSide === 1 ? other : lock);
}

/** The largest usual scale at which an object of this size fits between the margins. */
export function chooseScale(
  size: DrawingSize,
  keep: Margins,
  width: number,
  height: number,
): { ratio: number; text?: string } {
  const [across, down] = [size.width - keep.left - keep.right, size.height - keep.top - keep.bottom];
  const needed = Math.max(width / across, height / down);
  if (size.labels === 'none') return { ratio: needed };
  const least = Math.max(needed, size.ratio ?? 0);
  return scales.find((scale) => scale.ratio >= least) ?? { ratio: least, text: noScale };
}

/** Of a drawing that says its scale; undefined for one that has none. */
export const ratioOf = (text: string | undefined): number | undefined =>
  scales.find((scale) => scale.text === text)?.ratio;

import type { Box, HatchPattern, Part, Pen, Point, Primitive } from './scene.ts';

/** A label waiting for its place beside the drawing. */
export interface Label {
  readonly at: Point;
  readonly text: string;
}

/** Collects primitives in painting order, and labels to be placed once all is drawn. */
export class Sketch {
  readonly primitives: Primitive[] = [];
  readonly labels: Label[] = [];
  /** Real inches per inch of paper. */
  readonly scale: number;

  /** A thumbnail keeps everything at its true size: there is no room for more. */
  private readonly enlarges: boolean;

  constructor(scale: number, enlarges = true) {
    this.scale = scale;
    this.enlarges = enlarges;
  }

  line(from: Point, to: Point, pen: Pen): void {
    this.primitives.push({ kind: 'line', from, to, pen });
  }

  path(points: readonly Point[], pen: Pen, closed = false): void {
    this.primitives.push({ kind: 'polyline', points, closed, pen });
  }

  rect(box: Box, pen: Pen, part?: Part): void {
    this.primitives.push({ kind: 'rect', box, pen, ...(part === undefined ? {} : { part }) });
  }

  circle(center: Point, radius: number, pen: Pen): void {
    this.primitives.push({ kind: 'circle', center, radius, pen });
  }

  arc(center: Point, radius: number, start: number, end: number, pen: Pen): void {
    this.primitives.push({ kind: 'arc', center, radius, start, end, pen });
  }

  /** Spacing is chosen on paper, so a hatch looks alike at every scale. */
  hatch(box: Box, pattern: HatchPattern, paperSpacing = 0.14): void {
    if (box.width <= 0 || box.height <= 0) return;
    const spacing = paperSpacing * this.scale;
    this.primitives.push({ kind: 'hatch', box, pattern, spacing, pen: { weight: 'hair' } });
  }

  /** A symbol on a small-scale drawing is set a little larger than life, or nobody could see it. */
  seen(inches: number, onPaper: number): number {
    return this.enlarges ? Math.max(inches, onPaper * this.scale) : inches;
  }

  text(
    at: Point,
    text: string,
    size: number,
    how: { anchor?: 'start' | 'middle' | 'end'; upright?: boolean; strong?: boolean } = {},
  ): void {
    const { anchor = 'start', upright = false, strong = false } = how;
    this.primitives.push({ kind: 'text', at, text, size, anchor, upright, strong });
  }

  label(at: Point, text: string): void {
    // Two leaves carry the same closer; one label is enough.
    if (!this.labels.some((label) => label.text === text)) this.labels.push({ at, text });
  }
}

export const centered = (x: number, y: number, width: number, height: number): Box => ({
  x: x - width / 2,
  y: y - height / 2,
  width,
  height,
});

export const inset = (box: Box, by: number): Box => ({
  x: box.x + by,
  y: box.y + by,
  width: Math.max(0, box.width - 2 * by),
  height: Math.max(0, box.height - 2 * by),
});

export const pens = {
  hair: { weight: 'hair' },
  thin: { weight: 'thin' },
  medium: { weight: 'medium' },
  heavy: { weight: 'heavy' },
  cut: { weight: 'cut' },
  onPaper: { weight: 'thin', fill: 'paper' },
  hidden: { weight: 'thin', dash: 'hidden' },
  unknown: { weight: 'medium', dash: 'unknown' },
  chosen: { weight: 'medium', chosen: true, fill: 'ink' },
  chosenHidden: { weight: 'medium', chosen: true, dash: 'hidden' },
} as const satisfies Record<string, Pen>;

import { feetInches, wrap } from './lettering.ts';
import { type DrawingSize, letterHeight, lineHeight, labelColumnOf } from './paper.ts';
import { type Pen, textWidth } from './scene.ts';
import { type Label, pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

/** A measure on the drawing: a value that was surveyed, or the words that say it was not. */
export interface Measure {
  readonly inches: number;
  readonly known: boolean;
  /** A usual height, lettered as such and drawn broken. */
  readonly typical?: true;
  /** Set before or after the figure, as "2 leaves ×" or "typical". */
  readonly before?: string;
  readonly after?: string;
}

export function measureText({ inches, known, before, after }: Measure): string {
  const figure = known ? feetInches(inches) : '? not surveyed';
  return [before, figure, after].filter((part) => part !== undefined).join(' ');
}

/** The width as lettered: of the whole passage, except where two like leaves are meant. */
export function widthMeasure({ width, leaves, type }: Subject): Measure {
  if (leaves === 2 || type === 'slidingAutomatic') return { ...width, before: '2 leaves ×' };
  if (type === 'revolving') return { ...width, inches: 2 * width.inches, after: 'across' };
  return width;
}

const tick = 0.05;
const penOf = ({ known, typical }: Measure): Pen =>
  known && typical === undefined ? pens.hair : { weight: 'hair', dash: 'unknown' };

/** A level dimension line with slashes at its ends, its figure below. */
export function dimensionAcross(
  sketch: Sketch,
  from: number,
  to: number,
  y: number,
  measure: Measure,
  stops: readonly number[] = [],
): void {
  const half = tick * sketch.scale;
  sketch.line([from, y], [to, y], penOf(measure));
  for (const x of [from, ...stops, to]) {
    sketch.line([x, y - 2 * half], [x, y + half], pens.hair);
    sketch.line([x - half, y + half], [x + half, y - half], pens.medium);
  }
  const size = letterHeight * sketch.scale;
  sketch.text([(from + to) / 2, y + size * 1.15], measureText(measure), size, { anchor: 'middle' });
}

/** An upright dimension line, its figure turned to be read from the right. */
export function dimensionUp(
  sketch: Sketch,
  x: number,
  top: number,
  bottom: number,
  limit: number,
  measure: Measure,
): void {
  const half = tick * sketch.scale;
  sketch.line([x, top], [x, bottom], penOf(measure));
  for (const y of [top, bottom]) {
    sketch.line([x - half, y], [x + 2 * half, y], pens.hair);
    sketch.line([x - half, y + half], [x + half, y - half], pens.medium);
  }
  const size = letterHeight * sketch.scale;
  const text = measureText(measure);
  // A figure longer than its line may not run out of the sheet.
  const reach = textWidth(text, size) / 2;
  const middle = Math.max(reach, Math.min(limit - reach, (top + bottom) / 2));
  sketch.text([x - size * 0.35, middle], text, size, { anchor: 'middle', upright: true });
}

interface Block {
  readonly label: Label;
  readonly lines: readonly string[];
  y: number;
}

/**
 * Sets the labels into the column at the right, each as near as possible to the height of its part, none
 * over another, and joins them by leaders. Returns how they were set: words become numbers when the column
 * is too short for all of them, and the list beside the drawing then explains the numbers.
 */
export function setLabels(
  sketch: Sketch,
  size: DrawingSize,
  side: 1 | -1,
  top: number,
  bottom: number,
): { notes: string[]; labels: DrawingSize['labels'] } {
  const ordered = sketch.labels.toSorted((a, b) => a.at[1] - b.at[1] || a.at[0] - b.at[0]);
  const notes = ordered.map((label) => label.text);
  if (size.labels === 'none') return { notes, labels: 'none' };

  const letters = letterHeight * sketch.scale;
  const usual = lineHeight * sketch.scale;
  const gap = 0.07 * sketch.scale;
  const column = labelColumnOf(size) * sketch.scale;
  // Words begin at the leader: to the right of it, or, in a column at the left, they end there.
  const at =
    side === 1 ? size.width * sketch.scale - column + 0.14 * sketch.scale : column - 0.14 * sketch.scale;
  const fits = Math.floor((column - 0.18 * sketch.scale) / textWidth('x', letters));
  const inWords = ordered.map((label) => wrap(label.text, fits));
  const needed = inWords.reduce((sum, lines) => sum + lines.length * usual + gap, 0);
  const words =
    size.labels === 'words' && needed <= bottom - top && inWords.flat().every((line) => line.length <= fits);

  const blocks = ordered.map(
    (label, i): Block => ({ label, lines: words ? (inWords[i] ?? []) : [`${i + 1}`], y: 0 }),
  );
  // Many labels move closer before any of them leaves the sheet.
  const lineCount = blocks.reduce((sum, block) => sum + block.lines.length, 0);
  // Lines close up before that as far as letters do not touch.
  const leading = Math.max(letters * 1.02, Math.min(usual, (bottom - top) / Math.max(1, lineCount)));
  const room = (bottom - top - lineCount * leading) / Math.max(1, blocks.length);
  place(blocks, top, bottom, leading, Math.max(0, Math.min(gap, room)));
  const leaderEnd = at - side * 0.05 * sketch.scale;
  for (const { label, lines, y } of blocks) {
    const height = y + letters * 0.5;
    // The knee keeps leaders level where they meet the words.
    const knee = leaderEnd - side * 0.12 * sketch.scale;
    sketch.path([label.at, [knee, height], [leaderEnd, height]], pens.hair);
    sketch.circle(label.at, 0.018 * sketch.scale, { weight: 'hair', fill: 'ink' });
    lines.forEach((line, i) =>
      sketch.text([at, y + letters * 0.85 + i * leading], line, letters, {
        anchor: side === 1 ? 'start' : 'end',
      }),
    );
  }
  return { notes, labels: words ? 'words' : 'numbers' };
}

function place(blocks: readonly Block[], top: number, bottom: number, leading: number, gap: number): void {
  const high = (block: Block) => block.lines.length * leading + gap;
  let next = top;
  for (const block of blocks) {
    block.y = Math.max(next, block.label.at[1] - leading / 2);
    next = block.y + high(block);
  }
  // Pushed below the end: move up from the foot.
  let end = bottom;
  for (const block of blocks.toReversed()) {
    block.y = Math.min(block.y, end - high(block));
    end = block.y;
  }
}

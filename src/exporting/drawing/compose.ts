import { setLabels } from './annotate.ts';
import { wrap } from './lettering.ts';
import { type DrawingSize, letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import type { Sketch } from './sketch.ts';
import { type Subject, wordsOf } from './subject.ts';

/** What a finished drawing says besides its strokes. */
interface Sayings {
  readonly name: string;
  readonly sentences: readonly string[];
  readonly scale: string | undefined;
}

/** Labels, title and the words about what nobody surveyed; then the drawing is done. */
export function finish(
  sketch: Sketch,
  subject: Subject,
  size: DrawingSize,
  says: Sayings,
  foot: number,
): Drawing {
  const unit = sketch.scale;
  const frame = { width: size.width * unit, height: size.height * unit };
  const set = setLabels(sketch, size, 0.06 * unit, foot - 0.04 * unit);
  if (size.labels !== 'none') lettering(sketch, subject, size, says, frame.height);
  const missing = subject.notSurveyed;
  return {
    frame,
    paper: { width: size.width, height: size.height },
    ...(says.scale === undefined ? {} : { scale: says.scale }),
    title: says.name,
    description: [
      ...says.sentences,
      set.notes.length > 0 ? `Shown: ${set.notes.join('; ')}.` : '',
      missing.length > 0 ? `Not surveyed: ${missing.join(', ')}.` : '',
    ]
      .filter((sentence) => sentence !== '')
      .join(' '),
    notes: set.notes,
    labels: set.labels,
    notSurveyed: missing,
    primitives: sketch.primitives,
  };
}

const captionLines = 3;

function lettering(sketch: Sketch, subject: Subject, size: DrawingSize, says: Sayings, bottom: number): void {
  const unit = sketch.scale;
  const letters = letterHeight * unit;
  const left = 0.1 * unit;
  const fits = Math.floor(((size.width - 0.2) * unit) / textWidth('x', letters));
  const made = [
    ['Leaf', wordsOf('leafMaterial', subject.facts)],
    ['Frame', wordsOf('frameMaterial', subject.facts)],
  ].flatMap(([part, words]) => (words === undefined ? [] : [`${part}: ${words}`]));
  const all = [
    ...(made.length > 0 ? wrap(made.join(' · '), fits) : []),
    ...(subject.notSurveyed.length > 0
      ? wrap(`? Not surveyed: ${subject.notSurveyed.join(', ')}`, fits)
      : []),
  ];
  const lines = all.slice(0, captionLines);
  // The list beside the drawing has them all; the sheet says that there are more.
  if (all.length > captionLines)
    lines[captionLines - 1] = `${(lines[captionLines - 1] ?? '').slice(0, fits - 2)} …`;
  const title = says.scale === undefined ? says.name : `${says.name}, ${says.scale}`;
  const first = bottom - 0.08 * unit - captionLines * lineHeight * unit;
  sketch.line(
    [left, first + 0.03 * unit - letters],
    [size.width * unit - left, first + 0.03 * unit - letters],
    { weight: 'thin' },
  );
  sketch.text([left, first], title, letters, { strong: true });
  lines.forEach((line, i) => sketch.text([left, first + (i + 1) * lineHeight * unit], line, letters));
}

import { setLabels } from './annotate.ts';
import { wrap } from './lettering.ts';
import { type DrawingSize, footing, letterHeight, lineHeight, longestScale } from './paper.ts';
import { boundsOf, type Drawing, raised, textWidth } from './scene.ts';
import type { Sketch } from './sketch.ts';
import { type Subject, wordsOf } from './subject.ts';

/** What a finished drawing says besides its strokes. */
interface Sayings {
  readonly name: string;
  readonly sentences: readonly string[];
  readonly scale: string | undefined;
}

const lettersOfALine = (size: DrawingSize): number =>
  Math.floor((size.width - 0.2) / textWidth('x', letterHeight));

/** The name and its scale share a line where any scale would fit beside it. */
const isOneLine = (name: string, size: DrawingSize): boolean =>
  name.length + 2 + longestScale <= lettersOfALine(size);

/** Lines under a drawing, its title included. */
export function linesAtFoot(name: string, size: DrawingSize, caption: readonly string[]): number {
  return caption.length + (isOneLine(name, size) ? 1 : 2);
}

/** Remarks at the foot, broken into lines that fit the sheet. */
export function captionOf(subject: Subject, size: DrawingSize): readonly string[] {
  if (size.labels === 'none') return [];
  const fits = lettersOfALine(size);
  const made = [
    ['Leaf', wordsOf('leafMaterial', subject.facts)],
    ['Frame', wordsOf('frameMaterial', subject.facts)],
  ].flatMap(([part, words]) => (words === undefined ? [] : [`${part}: ${words}`]));
  return [
    ...(made.length > 0 ? wrap(made.join(' · '), fits) : []),
    ...(subject.notSurveyed.length > 0
      ? wrap(`? Not surveyed: ${subject.notSurveyed.join(', ')}`, fits)
      : []),
  ];
}

/** Labels, title and the words about what nobody surveyed; then the sheet is trimmed and done. */
export function finish(
  sketch: Sketch,
  subject: Subject,
  size: DrawingSize,
  says: Sayings,
  floor: number,
  caption: readonly string[],
): Drawing {
  const unit = sketch.scale;
  const set = setLabels(sketch, size, subject.lockSide, 0.06 * unit, floor + 0.1 * unit);
  if (size.labels !== 'none') lettering(sketch, size, says, floor, caption);
  // What stays empty above the drawing is cut off; a turnstile needs no sheet as high as a door's.
  const trim = Math.max(
    0,
    Math.min(...sketch.primitives.map((primitive) => boundsOf(primitive).y)) - 0.08 * unit,
  );
  const missing = subject.notSurveyed;
  return {
    frame: { width: size.width * unit, height: size.height * unit - trim },
    paper: { width: size.width, height: size.height - trim / unit },
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
    primitives: sketch.primitives.map((primitive) => raised(primitive, trim)),
  };
}

function lettering(
  sketch: Sketch,
  size: DrawingSize,
  says: Sayings,
  floor: number,
  caption: readonly string[],
): void {
  const unit = sketch.scale;
  const letters = letterHeight * unit;
  const left = 0.1 * unit;
  const rule = floor + footing * unit;
  sketch.line([left, rule], [size.width * unit - left, rule], { weight: 'thin' });
  const named = says.scale === undefined ? [says.name] : [says.name, says.scale];
  const title = isOneLine(says.name, size) ? [named.join(', ')] : named;
  [...title, ...caption].forEach((line, i) =>
    sketch.text([left, rule + ((i + 1) * lineHeight - 0.02) * unit], line, letters, {
      strong: i < title.length,
    }),
  );
}

import { setLabels } from './annotate.ts';
import { wrap } from './lettering.ts';
import { type DrawingSize, footing, letterHeight, lineHeight } from './paper.ts';
import { boundsOf, type Drawing, raised, textWidth } from './scene.ts';
import type { Sketch } from './sketch.ts';
import { type Subject, wordsOf } from './subject.ts';

/** What a finished drawing says besides its strokes. */
interface Sayings {
  readonly name: string;
  readonly sentences: readonly string[];
  readonly scale: string | undefined;
}

/** Title and remarks at the foot, broken into lines that fit the sheet. */
export function captionOf(subject: Subject, size: DrawingSize): readonly string[] {
  if (size.labels === 'none') return [];
  const fits = Math.floor((size.width - 0.2) / textWidth('x', letterHeight));
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
  const title = says.scale === undefined ? says.name : `${says.name}, ${says.scale}`;
  const first = rule + lineHeight * unit;
  sketch.text([left, first - 0.02 * unit], title, letters, { strong: true });
  caption.forEach((line, i) =>
    sketch.text([left, first + (i + 1) * lineHeight * unit - 0.02 * unit], line, letters),
  );
}

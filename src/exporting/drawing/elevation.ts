import type { FactValues } from '../../domain/model/fields.ts';
import { dimensionAcross, dimensionUp, measureText, widthMeasure } from './annotate.ts';
import { captionOf, finish, linesAtFoot } from './compose.ts';
import { drawOther, roomOf } from './elevation-kinds.ts';
import { drawSwinging, type Placed } from './elevation-swing.ts';
import { type Choice, drawAround, type WallPlace } from './locks.ts';
import { chooseScale, type DrawingSize, drawingSizes, leftEnd, margins, withWalls } from './paper.ts';
import type { Drawing } from './scene.ts';
import { pens, Sketch } from './sketch.ts';
import { type Subject, subjectOf, swinging, wordsOf } from './subject.ts';

/** Wall kept above for sensor and sign, inches. */
const wallAbove = 9;

/** The opening seen from the egress side, to scale. What nobody surveyed is drawn broken and said so. */
export function elevation(
  facts: FactValues,
  choice: Choice | undefined,
  size: DrawingSize = drawingSizes.sheet,
): Drawing {
  const subject = subjectOf(facts);
  const room = roomOf(subject);
  const name = 'Elevation, egress side';
  const caption = captionOf(subject, size);
  const keep = margins(size, subject.lockSide, linesAtFoot(name, size, caption));
  const scale = chooseScale(size, keep, withWalls(size, keep, room.width), room.height + wallAbove);
  const sketch = new Sketch(scale.ratio, size.labels !== 'none');
  const floor = (size.height - keep.bottom) * scale.ratio;
  const ends = [keep.left * scale.ratio, (size.width - keep.right) * scale.ratio] as const;
  const left = leftEnd(size, keep, scale.ratio, room.width, subject.lockSide);

  drawWall(sketch, subject, {
    left: ends[0],
    right: ends[1],
    opening: [left, left + room.width],
    top: floor - room.height - wallAbove,
    floor,
  });
  const placed = swinging.has(subject.type)
    ? drawSwinging(sketch, subject, choice, left, floor)
    : drawOther(sketch, subject, choice, left, floor);
  drawAround(
    sketch,
    choice,
    wallPlace(subject, placed, left, room.width, floor),
    facts.readerSides,
    facts.exitSign === true,
  );
  sketch.line([ends[0], floor], [ends[1], floor], pens.cut);
  if (size.labels !== 'none') dimensions(sketch, subject, placed, floor, size);

  const kind = wordsOf('doorType', facts) ?? 'Opening whose door type is not surveyed';
  const sentences = [
    `${kind}, seen from the egress side.`,
    `Width ${measureText(widthMeasure(subject))}, height ${measureText(subject.height)}.`,
  ];
  return finish(sketch, subject, size, { name, sentences, scale: scale.text }, floor, caption);
}

/** Readers and buttons go on the wall beside the lock; at a turnstile, on its body. */
function wallPlace(subject: Subject, placed: Placed, left: number, width: number, floor: number): WallPlace {
  const low = subject.type === 'turnstile' || subject.type === 'turnstileSecurity';
  const side = placed.away === 1 ? Math.max(placed.lockEdge, left + width) : Math.min(placed.lockEdge, left);
  return {
    x: low ? placed.right : side,
    away: placed.away,
    floor,
    head: placed.head,
    center: (placed.left + placed.right) / 2,
    half: (placed.right - placed.left) / 2,
    // Beside a very low leaf nothing may be drawn above the sheet.
    highest: subject.height.inches + (low ? -4 : 3),
  };
}

function dimensions(
  sketch: Sketch,
  subject: Subject,
  placed: Placed,
  floor: number,
  size: DrawingSize,
): void {
  const unit = sketch.scale;
  const [outer, inner] =
    subject.lockSide === 1
      ? [0.28 * unit, 0.62 * unit]
      : [(size.width - 0.14) * unit, (size.width - 0.5) * unit];
  dimensionAcross(
    sketch,
    placed.left,
    placed.right,
    floor + 0.18 * unit,
    widthMeasure(subject),
    placed.stops,
  );
  dimensionUp(sketch, outer, floor - subject.height.inches, floor, floor + 0.4 * unit, subject.height);
  if (swinging.has(subject.type)) {
    dimensionUp(
      sketch,
      inner,
      floor - Math.min(subject.hardware.inches, subject.height.inches),
      floor,
      floor + 0.4 * unit,
      subject.hardware,
    );
  }
}

interface Wall {
  readonly left: number;
  readonly right: number;
  readonly opening: readonly [number, number];
  readonly top: number;
  readonly floor: number;
}

/** The wall as far as its construction is known; a gate or a barrier stands free. */
function drawWall(sketch: Sketch, { facts, type }: Subject, wall: Wall): void {
  if (type === 'gateSwing' || type === 'gateSlide' || type.startsWith('turnstile')) return;
  const pattern = { masonry: 'masonry', glass: 'glass', gypsum: undefined, other: undefined }[
    facts.wallConstruction ?? 'other'
  ] as 'masonry' | 'glass' | undefined;
  if (pattern === undefined) return;
  const height = wall.floor - wall.top;
  for (const [from, to] of [
    [wall.left, wall.opening[0]],
    [wall.opening[1], wall.right],
  ] as const) {
    sketch.hatch({ x: from, y: wall.top, width: to - from, height }, pattern, 0.1);
  }
}

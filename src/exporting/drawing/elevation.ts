import type { FactValues } from '../../domain/model/fields.ts';
import { dimensionAcross, dimensionUp, measureText } from './annotate.ts';
import { finish } from './compose.ts';
import { drawOther, roomOf } from './elevation-kinds.ts';
import { drawSwinging, type Placed } from './elevation-swing.ts';
import { type Choice, drawAround } from './locks.ts';
import { chooseScale, type DrawingSize, drawingSizes, margins } from './paper.ts';
import type { Drawing } from './scene.ts';
import { pens, Sketch } from './sketch.ts';
import { type Subject, subjectOf, swinging, wordsOf } from './subject.ts';

/** Wall kept beside and above the opening for readers, buttons, sensors and signs, inches. */
const wallBeside = 12;
const wallAbove = 9;

/** The opening seen from the egress side, to scale. What nobody surveyed is drawn broken and said so. */
export function elevation(
  facts: FactValues,
  choice: Choice | undefined,
  size: DrawingSize = drawingSizes.sheet,
): Drawing {
  const subject = subjectOf(facts);
  const room = roomOf(subject);
  const thumb = size.labels === 'none';
  const [beside, above] = [wallBeside, wallAbove];
  const scale = chooseScale(size, room.width + 2 * beside, room.height + above);
  const sketch = new Sketch(scale.ratio);
  const keep = margins(size);
  const floor = (size.height - keep.bottom) * scale.ratio;
  const wallLeft = keep.left * scale.ratio;
  const wallRight = (size.width - keep.right) * scale.ratio;
  const left = (wallLeft + wallRight - room.width) / 2;

  drawWall(sketch, subject, {
    left: wallLeft,
    right: wallRight,
    opening: [left, left + room.width],
    top: floor - room.height - above,
    floor,
  });
  const placed = swinging.has(subject.type)
    ? drawSwinging(sketch, subject, choice, left, floor)
    : drawOther(sketch, subject, choice, left, floor);
  const edge =
    placed.away === 1 ? Math.max(placed.lockEdge, left + room.width) : Math.min(placed.lockEdge, left);
  drawAround(
    sketch,
    choice,
    { x: edge, away: placed.away, floor, head: placed.head, centre: (placed.left + placed.right) / 2 },
    facts.readerSides,
    facts.exitSign === true,
  );
  sketch.line([wallLeft, floor], [wallRight, floor], pens.cut);
  if (!thumb) dimensions(sketch, subject, placed, floor);

  const name = 'Elevation, egress side';
  const kind = wordsOf('doorType', facts) ?? 'Opening whose door type is not surveyed';
  const sentences = [
    `${kind}, seen from the egress side.`,
    `Width ${widthText(subject)}, height ${measureText(subject.height)}.`,
  ];
  return finish(sketch, subject, size, { name, sentences, scale: scale.text }, floor);
}

function widthText(subject: Subject): string {
  return measureText(widthMeasure(subject));
}

/** The width as lettered: of the whole passage, except where two like leaves are meant. */
function widthMeasure({ width, leaves, type }: Subject) {
  if (leaves === 2 || type === 'slidingAutomatic') return { ...width, before: '2 leaves ×' };
  if (type === 'revolving') return { ...width, inches: 2 * width.inches, after: 'across' };
  return width;
}

function dimensions(sketch: Sketch, subject: Subject, placed: Placed, floor: number): void {
  const unit = sketch.scale;
  dimensionAcross(
    sketch,
    placed.left,
    placed.right,
    floor + 0.18 * unit,
    widthMeasure(subject),
    placed.stops,
  );
  dimensionUp(sketch, 0.3 * unit, floor - subject.height.inches, floor, floor + 0.4 * unit, subject.height);
  if (swinging.has(subject.type)) {
    dimensionUp(
      sketch,
      0.62 * unit,
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

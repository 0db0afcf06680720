import { device, type DeviceFamily } from '../../domain/devices/devices.ts';
import type { FactValues } from '../../domain/model/fields.ts';
import { dimensionAcross, measureText, widthMeasure } from './annotate.ts';
import { captionOf, finish, linesAtFoot } from './compose.ts';
import { roomOf } from './elevation-kinds.ts';
import { type Choice, penOfDevice } from './locks.ts';
import {
  chooseScale,
  type DrawingSize,
  drawingSizes,
  letterHeight,
  leftEnd,
  lineHeight,
  margins,
  withWalls,
} from './paper.ts';
import { planOther, reachOf } from './plan-kinds.ts';
import { type Band, type PlanPlaced, planSwinging } from './plan-swing.ts';
import type { Drawing, HatchPattern } from './scene.ts';
import { centered, pens, Sketch } from './sketch.ts';
import { type Subject, subjectOf, swinging, wordsOf } from './subject.ts';

const wallThickness = 6;

/** The opening from above: secure side at the top, egress side at the bottom, both named. */
export function planView(
  facts: FactValues,
  choice: Choice | undefined,
  size: DrawingSize = drawingSizes.sheetPlan,
): Drawing {
  const subject = subjectOf(facts);
  const room = roomOf(subject);
  const reach = reachOf(subject, choice?.release === 'sensor');
  const name = 'Plan';
  const caption = captionOf(subject, size);
  const keep = margins(size, subject.lockSide, linesAtFoot(name, size, caption));
  const lettered = size.labels !== 'none';
  // Two lines of words, one on each side, stand outside everything that is drawn.
  const rows = lettered ? 2.2 * lineHeight : 0;
  const scale = chooseScale(
    lettered ? { ...size, height: size.height - rows } : size,
    keep,
    withWalls(size, keep, room.width),
    reach.up + wallThickness + reach.down,
  );
  const sketch = new Sketch(scale.ratio, lettered);
  const foot = (size.height - keep.bottom) * scale.ratio;
  const low = foot - (rows / 2) * scale.ratio;
  const band: Band = { top: low - reach.down - wallThickness, bottom: low - reach.down };
  const ends = [keep.left * scale.ratio, (size.width - keep.right) * scale.ratio] as const;
  const left = leftEnd(size, keep, scale.ratio, room.width, subject.lockSide);

  const placed = swinging.has(subject.type)
    ? planSwinging(sketch, subject, left, band)
    : planOther(sketch, subject, left, band);
  drawWall(sketch, subject, placed, band, ends);
  drawJambs(sketch, subject, placed, band);
  if (choice !== undefined) drawDevice(sketch, choice, placed);
  drawAround(sketch, subject, choice, placed, band);
  if (lettered) {
    const letters = letterHeight * scale.ratio;
    const center = (placed.left + placed.right) / 2;
    const high = band.top - reach.up;
    sketch.text([center, high - letters * 0.35], 'Secure side', letters, { anchor: 'middle', strong: true });
    sketch.text([center, low + letters * 0.95], 'Egress side', letters, { anchor: 'middle', strong: true });
    dimensionAcross(
      sketch,
      placed.left,
      placed.right,
      foot + 0.18 * scale.ratio,
      widthMeasure(subject),
      placed.stops,
    );
  }
  const kind = wordsOf('doorType', facts) ?? 'Opening whose door type is not surveyed';
  const swing =
    subject.towardEgress === undefined
      ? 'not known'
      : subject.towardEgress
        ? 'to the egress side'
        : 'to the secure side';
  const sentences = [
    `${kind} from above, secure side at the top.`,
    swinging.has(subject.type) && subject.type !== 'doubleActing' && subject.type !== 'doubleEgressPair'
      ? `Swing: ${swing}.`
      : '',
    `Width ${measureText(widthMeasure(subject))}.`,
  ].filter((sentence) => sentence !== '');
  return finish(sketch, subject, size, { name, sentences, scale: scale.text }, foot, caption);
}

function standsFree({ type }: Subject): boolean {
  return type === 'gateSwing' || type === 'gateSlide' || type.startsWith('turnstile');
}

const wallHatch: Partial<Record<NonNullable<FactValues['wallConstruction']>, HatchPattern>> = {
  masonry: 'metal',
  gypsum: 'studs',
};

/** Both stretches of wall, cut: heavy faces, and between them what the wall is built of. */
function drawWall(
  sketch: Sketch,
  subject: Subject,
  placed: PlanPlaced,
  band: Band,
  ends: readonly [number, number],
): void {
  if (standsFree(subject)) return;
  const pattern = wallHatch[subject.facts.wallConstruction ?? 'other'];
  const glass = subject.facts.wallConstruction === 'glass';
  for (const [from, to] of [
    [ends[0], placed.frame[0]],
    [placed.frame[1], ends[1]],
  ] as const) {
    if (to <= from) continue;
    const box = { x: from, y: band.top, width: to - from, height: band.bottom - band.top };
    if (pattern !== undefined) sketch.hatch(box, pattern, 0.06);
    const faces = glass
      ? [-0.8, 0.8].map((off) => (band.top + band.bottom) / 2 + off)
      : [band.top, band.bottom];
    for (const y of faces) sketch.line([from, y], [to, y], glass ? pens.medium : pens.heavy);
  }
}

/** Jambs in section, hatched by what the frame is made of; posts of a gate are inked. */
function drawJambs(sketch: Sketch, subject: Subject, placed: PlanPlaced, band: Band): void {
  if (subject.type === 'gateSlide' || subject.type.startsWith('turnstile') || subject.type === 'revolving')
    return;
  const { frameMaterial } = subject.facts;
  for (const [from, to] of [
    [placed.frame[0], placed.left],
    [placed.right, placed.frame[1]],
  ] as const) {
    const box = { x: from, y: band.top - 0.5, width: to - from, height: band.bottom - band.top + 1 };
    if (box.width <= 0 || box.width > 6) continue;
    if (subject.type === 'gateSwing') {
      sketch.rect(
        centered(from + box.width / 2, (band.top + band.bottom) / 2, box.width, band.bottom - band.top),
        { weight: 'medium', fill: 'ink' },
        'frame',
      );
      continue;
    }
    sketch.rect(
      box,
      frameMaterial === undefined ? { ...pens.unknown, fill: 'paper' } : { weight: 'medium', fill: 'paper' },
      'frame',
    );
    if (frameMaterial === 'wood') sketch.hatch(box, 'wood', 0.03);
    else if (frameMaterial !== undefined)
      sketch.hatch(box, frameMaterial === 'aluminium' ? 'aluminium' : 'metal', 0.035);
  }
}

const inFrame: ReadonlySet<DeviceFamily> = new Set<DeviceFamily>(['strike']);

function drawDevice(sketch: Sketch, { deviceId }: Choice, placed: PlanPlaced): void {
  const { family, name, besideLeafLock: above } = device(deviceId);
  const [x, y] = inFrame.has(family) ? placed.inFrame : above ? placed.overhead : placed.onLeaf;
  const side = sketch.seen(2.6, 0.08);
  const box = above ? centered(x, y, sketch.seen(9, 0.2), side) : centered(x, y, side, side);
  sketch.rect(box, above ? pens.chosenHidden : penOfDevice(deviceId), 'lock');
  sketch.label([x, y], name);
}

/** Readers, button and sensor where they hang on the wall. */
function drawAround(
  sketch: Sketch,
  subject: Subject,
  choice: Choice | undefined,
  placed: PlanPlaced,
  band: Band,
): void {
  const away = subject.lockSide;
  const low = subject.type === 'turnstile' || subject.type === 'turnstileSecurity';
  const edge = (away === 1 ? placed.frame[1] : placed.frame[0]) - (low ? away * 9 : 0);
  const wide = sketch.seen(3, 0.08);
  const deep = sketch.seen(1.6, 0.05);
  const mount = (x: number, secure: boolean, text: string, chosen = false) => {
    const y = secure ? band.top - deep / 2 : band.bottom + deep / 2;
    sketch.rect(centered(x, y, wide, deep), chosen ? { ...pens.chosen, fill: 'paper' } : pens.onPaper);
    sketch.label([x, y], text);
  };
  const at = edge + away * sketch.seen(4, 0.11);
  const readers = subject.facts.readerSides;
  if (readers !== undefined && readers !== 'none') mount(at, true, 'Reader');
  if (readers === 'both' || readers === 'recordOut')
    mount(at, false, readers === 'both' ? 'Reader, egress side' : 'Reader, records only');
  if (choice?.release === 'sensor' || choice?.release === 'buttonOnly')
    mount(at + away * wide * 1.4, false, 'Push to exit', true);
  if (choice?.release !== 'sensor') return;
  const center = (placed.left + placed.right) / 2;
  const from = [center, band.bottom + 3] as const;
  sketch.rect(centered(center, from[1], 7, 2.4), { ...pens.chosenHidden });
  sketch.arc(from, Math.min(22, (placed.right - placed.left) / 2 + 4), 25, 155, {
    weight: 'hair',
    dash: 'hidden',
  });
  sketch.label([center + 2, from[1]], 'Exit sensor above');
}

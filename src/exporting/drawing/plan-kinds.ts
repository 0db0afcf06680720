import type { Band, PlanPlaced } from './plan-swing.ts';
import { arcPoint, type Pen, type Point } from './scene.ts';
import { pens, type Sketch } from './sketch.ts';
import { type Subject, swinging } from './subject.ts';

/** How far a type reaches to the secure side (up) and to the egress side (down), inches. */
export function reachOf(subject: Subject, sensor: boolean): { up: number; down: number } {
  const w = subject.width.inches;
  const things = { up: 9, down: sensor ? 28 : 16 };
  if (swinging.has(subject.type)) {
    const both = subject.type === 'doubleActing' || subject.type === 'doubleEgressPair';
    const toward = subject.towardEgress ?? false;
    // The hinge edge of a balanced leaf moves to the other side.
    const other = subject.type === 'balanced' ? w / 3 : 0;
    return {
      up: both || !toward ? w + 2 : Math.max(other, things.up),
      down: both || toward ? Math.max(w + 2, things.down) : Math.max(other, things.down),
    };
  }
  switch (subject.type) {
    case 'revolving':
    case 'turnstileFull':
      return { up: Math.max(w, things.up), down: Math.max(w, things.down) };
    case 'turnstile':
    case 'turnstileSecurity':
      return { up: Math.max(24, w * 0.6), down: Math.max(24, w * 0.6, things.down) };
    case 'gateSlide':
      return { up: things.up, down: Math.max(things.down, w * 0.16) };
    case 'folding':
      return { up: 16, down: things.down };
    default:
      return things;
  }
}

const plain: Pen = { weight: 'medium', fill: 'paper' };

function arrow(sketch: Sketch, from: number, to: number, y: number): void {
  const tip = Math.sign(to - from) * sketch.seen(3, 0.09);
  sketch.line([from, y], [to, y], pens.medium);
  sketch.path(
    [
      [to - tip, y - Math.abs(tip) * 0.6],
      [to, y],
      [to - tip, y + Math.abs(tip) * 0.6],
    ],
    pens.medium,
  );
}

/** Every type that does not swing, in plan. `left` is the left end of its room. */
export function planOther(sketch: Sketch, subject: Subject, left: number, band: Band): PlanPlaced {
  const w = subject.width.inches;
  const middle = (band.top + band.bottom) / 2;
  const pen: Pen = subject.width.known && subject.facts.doorType !== undefined ? pens.medium : pens.unknown;
  const sheet: Pen = { ...pen, fill: 'paper' };
  const thick = sketch.seen(subject.facts.leafThicknessIn ?? 1.75, 0.04);
  const placed = (
    from: number,
    to: number,
    lock: Point,
    stops: readonly number[] = [],
    face = 2,
  ): PlanPlaced => ({
    left: from,
    right: to,
    frame: [from - face, to + face],
    inFrame: lock,
    overhead: lock,
    onLeaf: lock,
    stops,
  });
  switch (subject.type) {
    case 'slidingManual': {
      const x = left + 3;
      const y = band.bottom + 1;
      sketch.rect({ x: x + w, y, width: w, height: thick }, { weight: 'thin', dash: 'hidden' });
      sketch.rect({ x: x + w * 0.45, y, width: w, height: thick }, sheet);
      sketch.line([x, y + thick + 1], [x + 2 * w, y + thick + 1], pens.hair);
      arrow(sketch, x + w * 1.05, x + w * 1.4, y + thick + sketch.seen(5, 0.14));
      return placed(x, x + w, [x + 1, middle]);
    }
    case 'slidingAutomatic': {
      const x = left + 4;
      const center = x + 1.5 * w;
      for (const fixed of [x, center + w])
        sketch.rect({ x: fixed, y: middle - thick / 2, width: w / 2, height: thick }, plain);
      for (const [leaf, way] of [
        [center - 1.35 * w, -1],
        [center + 0.35 * w, 1],
      ] as const) {
        sketch.rect({ x: leaf, y: band.bottom + 0.5, width: w, height: thick }, sheet);
        const from = leaf + (way === 1 ? 0.3 : 0.7) * w;
        arrow(sketch, from, from + way * w * 0.4, band.bottom + thick + sketch.seen(5, 0.13));
      }
      return {
        ...placed(center - w, center + w, [center, band.top + 1], [center]),
        frame: [x - 2, x + 3 * w + 2],
      };
    }
    case 'folding': {
      const x = left + 4;
      const folds = Math.max(4, 2 * Math.round(w / 24));
      const deep = Math.min(12, w / 4);
      const points = Array.from(
        { length: folds + 1 },
        (_, i): Point => [x + (w * 0.75 * i) / folds, middle + (i % 2 === 0 ? 0 : -deep)],
      );
      sketch.line([x, middle], [x + w, middle], { weight: 'hair', dash: 'hidden' });
      sketch.path(points, { ...pen, weight: 'heavy' });
      return placed(x, x + w, [x + w - 1, middle]);
    }
    case 'revolving':
      return drum(sketch, w, [left + 3 + w, middle], pen, 4, placed);
    case 'turnstileFull': {
      const center = left + 4 + w;
      // Only one half of the drum is the passage; the other half is its cage.
      return { ...drum(sketch, w, [center, middle], pen, 3, placed), left: center, stops: [] };
    }
    case 'overhead':
    case 'grille': {
      const x = left + 5;
      sketch.rect({ x: x - 3, y: band.bottom, width: w + 6, height: 14 }, pens.hidden);
      sketch.label([x + w * 0.2, band.bottom + 11], 'Coil overhead');
      for (const jamb of [x - 3, x + w])
        sketch.rect({ x: jamb, y: band.bottom - 0.5, width: 3, height: 4 }, plain);
      sketch.line([x, band.bottom + 1.5], [x + w, band.bottom + 1.5], { ...pen, weight: 'heavy' });
      return placed(x, x + w, [x + w - 2, band.bottom + 1.5], [], 3);
    }
    case 'gateSlide': {
      const x = left + 6;
      const y = band.bottom + 0.5;
      for (const post of [x - 4, x + w])
        sketch.rect({ x: post, y: middle - 2, width: 4, height: 4 }, { weight: 'medium', fill: 'ink' });
      sketch.rect({ x: x + 0.25 * w, y, width: w, height: thick }, sheet);
      sketch.rect({ x, y, width: 0.25 * w, height: thick }, pens.hidden);
      arrow(sketch, x + w * 0.5, x + w * 0.9, y + thick + sketch.seen(5, 0.13));
      return placed(x, x + w, [x - 2, y + thick / 2], [], 4);
    }
    default: {
      const x = left + 11;
      for (const body of [x - 10, x + w])
        sketch.rect({ x: body, y: middle - 22, width: 10, height: 44 }, plain);
      if (subject.type === 'turnstile') {
        for (const turn of [0, 40, -40])
          sketch.line(
            [x, middle],
            arcPoint([x, middle], w * 0.85, turn),
            turn === 0 ? { ...pen, weight: 'heavy' } : pen,
          );
        sketch.circle([x, middle], sketch.seen(2, 0.05), plain);
      } else
        for (const [from, to] of [
          [x, x + w * 0.47],
          [x + w, x + w * 0.53],
        ] as const)
          sketch.line([from, middle], [to, middle], { ...pen, weight: 'heavy' });
      return placed(x, x + w, [x - 5, middle], [], 10);
    }
  }
}

/** Something that turns: its wings, and the walls of its drum at both sides. */
function drum(
  sketch: Sketch,
  radius: number,
  center: Point,
  pen: Pen,
  wings: 3 | 4,
  placed: (from: number, to: number, lock: Point) => PlanPlaced,
): PlanPlaced {
  for (const side of [0, 180]) sketch.arc(center, radius, side - 45, side + 45, pens.heavy);
  for (const gap of [90, 270])
    sketch.arc(center, radius, gap - 45, gap + 45, { weight: 'hair', dash: 'hidden' });
  for (let i = 0; i < wings; i += 1)
    sketch.line(center, arcPoint(center, radius * 0.97, (360 / wings) * i + (wings === 4 ? 45 : 90)), pen);
  sketch.circle(center, Math.min(radius / 6, sketch.seen(2, 0.05)), { weight: 'medium', fill: 'paper' });
  return placed(center[0] - radius, center[0] + radius, center);
}

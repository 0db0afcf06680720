import { faceOf } from './elevation-swing.ts';
import { arcPoint, type Pen, type Point } from './scene.ts';
import { pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

/** The wall in plan: the secure side is above it, the egress side below. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
}

export interface PlanPlaced {
  /** Clear opening. */
  readonly left: number;
  readonly right: number;
  /** Outer edges of frame or posts, where the wall begins. */
  readonly frame: readonly [number, number];
  /** Where the chosen device sits: in the frame, overhead, or on the leaf. */
  readonly inFrame: Point;
  readonly overhead: Point;
  readonly onLeaf: Point;
  readonly stops: readonly number[];
}

interface Hung {
  readonly hinge: Point;
  /** +1 when the closed leaf reaches to the right. */
  readonly along: 1 | -1;
  /** +1 when it opens downward, to the egress side. */
  readonly down: 1 | -1;
  readonly width: number;
  readonly pen: Pen;
}

const point = (from: Point, degrees: number, far: number): Point => arcPoint(from, far, degrees);

/** A leaf standing open, and the arc its lock edge travels. Returns the lock edge. */
function leafAndArc(sketch: Sketch, hung: Hung, subject: Subject, pen: Pen = hung.pen): Point {
  const closed = hung.along === 1 ? 0 : 180;
  const swing = subject.facts.opensTo90 === false ? 60 : 90;
  const open = closed + hung.along * hung.down * swing;
  const thick = sketch.seen(subject.facts.leafThicknessIn ?? 1.75, 0.04);
  const tip = point(hung.hinge, open, hung.width);
  const side = open - hung.along * hung.down * 90;
  sketch.arc(hung.hinge, hung.width, closed, open, {
    weight: 'hair',
    ...(hung.pen.dash ? { dash: hung.pen.dash } : {}),
  });
  sketch.path(
    [hung.hinge, tip, point(tip, side, thick), point(hung.hinge, side, thick)],
    { ...pen, fill: 'paper' },
    true,
  );
  return point(tip, side, thick / 2);
}

export function planSwinging(sketch: Sketch, subject: Subject, left: number, band: Band): PlanPlaced {
  const face = faceOf(subject);
  const w = subject.width.inches;
  const post = subject.leaves === 2 && subject.facts.mullion === true ? 2 : 0;
  const clear = [left + face, left + face + subject.leaves * w + post] as const;
  const unsure = !subject.width.known || subject.facts.doorType === undefined;
  const handUnknown = subject.facts.handing === undefined && subject.type !== 'doubleActing';
  const pen: Pen = unsure || (handUnknown && subject.leaves === 1) ? pens.unknown : pens.medium;
  const toward = subject.towardEgress ?? false;

  const hang = (x: number, along: 1 | -1, egress: boolean): Hung => ({
    hinge: [x, egress ? band.bottom : band.top],
    along,
    down: egress ? 1 : -1,
    width: w,
    pen: subject.towardEgress === undefined && subject.type !== 'doubleActing' ? pens.unknown : pen,
  });
  const hinges =
    subject.leaves === 2
      ? ([
          [clear[0], 1],
          [clear[1], -1],
        ] as const)
      : ([[subject.hingeLeft ? clear[0] : clear[1], subject.hingeLeft ? 1 : -1]] as const);
  const lockX = subject.leaves === 2 ? (clear[0] + clear[1]) / 2 : subject.hingeLeft ? clear[1] : clear[0];
  const away = subject.leaves === 2 ? 0 : subject.hingeLeft ? 1 : -1;

  let tip: Point = [lockX, band.top];
  for (const [x, along] of hinges) {
    const active = subject.leaves === 1 || (along === 1) === subject.hingeLeft;
    const egress = subject.type === 'doubleEgressPair' ? !active : toward;
    const hung = hang(x, along, egress);
    if (subject.type === 'balanced') tip = balanced(sketch, hung, subject);
    else {
      const reached = leafAndArc(sketch, hung, subject);
      if (active) tip = reached;
    }
    // A double-acting leaf also goes the other way; that position is drawn broken.
    if (subject.type === 'doubleActing') leafAndArc(sketch, hang(x, along, !egress), subject, pens.hidden);
  }
  if (post > 0)
    sketch.rect({ x: clear[0] + w, y: band.top, width: post, height: band.bottom - band.top }, pens.onPaper);
  const middle = (band.top + band.bottom) / 2;
  const headY = toward ? band.bottom + 1.5 : band.top - 1.5;
  return {
    left: clear[0],
    right: clear[1],
    frame: [clear[0] - face, clear[1] + face],
    inFrame: [lockX + away * Math.max(0.8, face / 2), middle],
    overhead: [lockX - (away === 0 ? 0 : away * Math.min(6, w / 3)), headY],
    onLeaf: tip,
    stops: subject.leaves === 2 ? [lockX] : [],
  };
}

/** A balanced leaf turns about a pivot a third in, so its hinge edge moves the other way. */
function balanced(sketch: Sketch, hung: Hung, subject: Subject): Point {
  const inward = hung.width / 3;
  const pivot: Point = [hung.hinge[0] + hung.along * inward, hung.hinge[1]];
  const tip = leafAndArc(sketch, { ...hung, hinge: pivot, width: hung.width - inward }, subject);
  const closed = hung.along === 1 ? 180 : 0;
  sketch.line(pivot, point(pivot, closed + hung.along * hung.down * 90, inward * 0.9), hung.pen);
  sketch.line(hung.hinge, pivot, { weight: 'thin', dash: 'hidden' });
  sketch.circle(pivot, sketch.seen(1, 0.03), { weight: 'medium', fill: 'paper' });
  return tip;
}

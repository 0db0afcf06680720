import { type DeviceId, devices } from '../../domain/devices/devices.ts';
import { drawFrame, faceOf, type Placed } from './elevation-swing.ts';
import { drawLeaf, outline } from './leaf.ts';
import { type Choice, penOfDevice } from './locks.ts';
import type { Box, Pen } from './scene.ts';
import { centered, inset, pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

/** How much room a type needs beside and above its clear opening, inches. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

export function roomOf(subject: Subject): Room {
  const [w, h] = [subject.width.inches, subject.height.inches];
  switch (subject.type) {
    case 'slidingManual':
      return { width: 2 * w + 6, height: h + 8 };
    case 'slidingAutomatic':
      return { width: 3 * w + 8, height: h + 10 };
    case 'folding':
      return { width: w + 8, height: h + 6 };
    case 'revolving':
      return { width: 2 * w + 6, height: h + 12 };
    case 'overhead':
    case 'grille':
      return { width: w + 10, height: h + 16 };
    case 'gateSlide':
      return { width: 1.4 * w + 12, height: h + 6 };
    case 'turnstile':
    case 'turnstileSecurity':
      return { width: w + 26, height: h + 4 };
    case 'turnstileFull':
      return { width: 2 * w + 12, height: h + 6 };
    default:
      return {
        width:
          subject.leaves * w +
          2 * faceOf(subject) +
          (subject.facts.mullion === true && subject.leaves === 2 ? 2 : 0),
        height: h + 4,
      };
  }
}

/** The electrified part, at the place where this type is held. */
function lock(sketch: Sketch, deviceId: DeviceId | undefined, x: number, y: number, scale = 1): void {
  if (deviceId === undefined) return;
  sketch.rect(
    centered(x, y, sketch.seen(3 * scale, 0.08), sketch.seen(5 * scale, 0.13)),
    penOfDevice(deviceId),
    'lock',
  );
  sketch.label([x, y], devices[deviceId].name);
}

const plain: Pen = { weight: 'medium', fill: 'paper' };
const arrow = (sketch: Sketch, from: number, to: number, y: number): void => {
  const tip = Math.sign(to - from) * 3;
  sketch.line([from, y], [to, y], pens.medium);
  sketch.path(
    [
      [to - tip, y - 1.8],
      [to, y],
      [to - tip, y + 1.8],
    ],
    pens.medium,
  );
};

/** Every type that does not swing. `left` is the left end of the room it was given. */
export function drawOther(
  sketch: Sketch,
  subject: Subject,
  choice: Choice | undefined,
  left: number,
  floor: number,
): Placed {
  const [w, h] = [subject.width.inches, subject.height.inches];
  const id = choice?.deviceId;
  const top = floor - h;
  const grip = Math.min(40, h * 0.5);
  switch (subject.type) {
    case 'slidingManual': {
      const clear = { x: left + 3, y: top, width: w, height: h };
      drawFrame(sketch, clear, Math.min(2, faceOf(subject)), subject);
      sketch.rect({ x: clear.x + w, y: top, width: w, height: h }, { weight: 'thin', dash: 'hidden' });
      drawLeaf(sketch, { box: clear, hingeLeft: false, active: true }, subject);
      sketch.rect({ x: clear.x, y: top - 4, width: 2 * w, height: 3 }, plain);
      for (const part of [0.15, 0.85])
        sketch.circle([clear.x + w * part, top - 2.5], 1.1, { weight: 'thin', fill: 'ink' });
      sketch.label([clear.x + w * 1.5, top - 2.5], 'Track');
      arrow(sketch, clear.x + w * 1.1, clear.x + w * 1.1 + Math.min(16, w * 0.6), floor - grip);
      sketch.line([clear.x + 3, floor - grip - 5], [clear.x + 3, floor - grip + 5], pens.cut);
      lock(sketch, id, clear.x + 1.5, floor - grip - Math.min(9, h * 0.12));
      return { lockEdge: clear.x, away: -1, head: top - 4, left: clear.x, right: clear.x + w, stops: [] };
    }
    case 'slidingAutomatic': {
      const x = left + 4;
      const middle = x + 1.5 * w;
      for (const panel of [x, middle + w]) {
        sketch.rect({ x: panel, y: top, width: w / 2, height: h }, plain);
        sketch.hatch({ x: panel, y: top, width: w / 2, height: h }, 'glass');
      }
      for (const leaf of [middle - w, middle])
        drawLeaf(
          sketch,
          { box: { x: leaf, y: top, width: w, height: h }, hingeLeft: leaf < middle, active: true },
          subject,
        );
      sketch.rect({ x: x - 2, y: top - 6, width: 3 * w + 4, height: 6 }, plain);
      sketch.hatch({ x: x - 2, y: top - 6, width: 3 * w + 4, height: 6 }, 'aluminium', 0.1);
      sketch.label([middle + w, top - 3], 'Operator in header');
      arrow(sketch, middle - w * 0.15, middle - w * 0.15 - Math.min(14, w * 0.5), floor - h * 0.3);
      arrow(sketch, middle + w * 0.15, middle + w * 0.15 + Math.min(14, w * 0.5), floor - h * 0.3);
      if (subject.facts.breakaway === true)
        sketch.label([middle - w * 0.5, floor - h * 0.16], 'Leaves swing out');
      lock(sketch, id, middle, Math.max(top + 3, floor - grip));
      return {
        lockEdge: middle + 1.5 * w,
        away: 1,
        head: top - 6,
        left: middle - w,
        right: middle + w,
        stops: [middle],
      };
    }
    case 'folding': {
      const clear = { x: left + 4, y: top, width: w, height: h };
      drawFrame(sketch, clear, Math.min(2, faceOf(subject)), subject);
      drawLeaf(sketch, { box: clear, hingeLeft: true, active: true }, subject);
      const panels = Math.max(2, Math.round(w / 18));
      for (let i = 1; i < panels; i += 1) {
        const x = clear.x + (w * i) / panels;
        sketch.line([x, top], [x, floor], i % 2 === 0 ? pens.medium : { weight: 'thin', dash: 'hidden' });
      }
      sketch.line([clear.x, top - 0.8], [clear.x + w, top - 0.8], pens.heavy);
      sketch.label([clear.x + w * 0.75, top - 0.8], 'Track');
      arrow(sketch, clear.x + w * 0.9, clear.x + w * 0.55, floor - h * 0.25);
      lock(sketch, id, clear.x + w - 1.5, floor - grip);
      return { lockEdge: clear.x + w, away: 1, head: top - 2, left: clear.x, right: clear.x + w, stops: [] };
    }
    case 'revolving':
      return revolving(sketch, subject, id, left + 3, floor);
    case 'overhead':
    case 'grille': {
      const clear = { x: left + 5, y: top, width: w, height: h };
      sketch.rect({ x: clear.x - 3, y: top - 14, width: w + 6, height: 14 }, plain);
      sketch.circle([clear.x + 4, top - 7], Math.min(5, w / 6), pens.hidden);
      sketch.label([clear.x + 4, top - 7], 'Coil in its hood');
      for (const x of [clear.x - 3, clear.x + w])
        sketch.rect({ x, y: top, width: 3, height: h }, plain, 'frame');
      sketch.rect(clear, { weight: 'hair', fill: 'paper' }, 'leaf');
      sketch.hatch(
        clear,
        subject.type === 'grille' ? 'lattice' : 'slats',
        subject.type === 'grille' ? 0.07 : 0.09,
      );
      sketch.rect({ x: clear.x, y: floor - Math.min(4, h / 6), width: w, height: Math.min(4, h / 6) }, plain);
      outline(sketch, clear, subject);
      lock(sketch, id, clear.x + w - 2, floor - Math.min(6, h / 4), 1.4);
      return {
        lockEdge: clear.x + w + 3,
        away: 1,
        head: top - 14,
        left: clear.x,
        right: clear.x + w,
        stops: [],
      };
    }
    case 'gateSlide':
      return slidingGate(sketch, subject, id, left + 6, floor);
    default:
      return barrier(sketch, subject, id, left, floor);
  }
}

/** A drum with its canopy: the enclosure at both sides, the shaft, and the wings at a quarter turn. */
function revolving(
  sketch: Sketch,
  subject: Subject,
  id: DeviceId | undefined,
  left: number,
  floor: number,
): Placed {
  const [w, h] = [subject.width.inches, subject.height.inches];
  const top = floor - h;
  const middle = left + w;
  sketch.rect({ x: left - 1.5, y: top - 10, width: 2 * w + 3, height: 10 }, plain);
  const drum: Box = { x: left, y: top, width: 2 * w, height: h };
  sketch.rect(drum, { weight: 'hair', fill: 'paper' }, 'leaf');
  // The curved walls crowd toward the edge, as a cylinder does when seen from the front.
  for (const turn of [78, 66, 54, 44]) {
    const reach = w * Math.sin((turn * Math.PI) / 180);
    for (const x of [middle - reach, middle + reach]) sketch.line([x, top], [x, floor], pens.hair);
  }
  for (const side of [-1, 1] as const) {
    const wing = { x: side < 0 ? middle - w * 0.66 : middle, y: top + 1, width: w * 0.66, height: h - 2 };
    sketch.rect(wing, pens.onPaper);
    sketch.rect(inset(wing, Math.min(2.5, wing.width / 6)), pens.hair);
    sketch.hatch(wing, 'glass');
  }
  sketch.line([middle, top], [middle, floor], pens.cut);
  outline(sketch, drum, subject);
  lock(sketch, id, middle, top - 5);
  return { lockEdge: middle + w + 1.5, away: 1, head: top - 10, left, right: left + 2 * w, stops: [] };
}

function slidingGate(
  sketch: Sketch,
  subject: Subject,
  id: DeviceId | undefined,
  left: number,
  floor: number,
): Placed {
  const [w, h] = [subject.width.inches, subject.height.inches];
  const top = floor - h;
  const leaf: Box = { x: left, y: top, width: w, height: h - Math.min(4, h / 8) };
  for (const x of [left - 4, left + w])
    sketch.rect({ x, y: top - 4, width: 4, height: h + 4 }, plain, 'frame');
  drawLeaf(sketch, { box: leaf, hingeLeft: false, active: true }, subject);
  const tail = 0.4 * w;
  sketch.path(
    [
      [left + w + 4, leaf.y + leaf.height],
      [left + w + tail, leaf.y + leaf.height],
      [left + w + 4, top + h * 0.25],
    ],
    { weight: 'thin', dash: 'hidden' },
  );
  for (const part of [0.12, 0.88])
    sketch.circle([left + w * part, floor - Math.min(2, h / 16)], Math.min(2, h / 16), {
      weight: 'medium',
      fill: 'paper',
    });
  arrow(sketch, left + w * 0.35, left + w * 0.65, floor - h * 0.3);
  lock(sketch, id, left + 1, floor - Math.min(40, h * 0.55), 1.4);
  return { lockEdge: left - 4, away: -1, head: top - 4, left, right: left + w, stops: [] };
}

/** Turnstiles: a passage between two bodies, and what turns or parts in it. */
function barrier(
  sketch: Sketch,
  subject: Subject,
  id: DeviceId | undefined,
  left: number,
  floor: number,
): Placed {
  const [w, h] = [subject.width.inches, subject.height.inches];
  const top = floor - h;
  const whole = subject.type === 'turnstileFull';
  const body = whole ? w + 4 : 10;
  const start = left + (whole ? 3 : 1) + body;
  const leaf: Box = { x: start, y: top, width: w, height: h };
  sketch.rect({ x: start - body, y: top, width: body, height: h }, plain, 'frame');
  if (whole) {
    sketch.hatch({ x: start - body, y: top, width: body - 2, height: h }, 'pickets');
    for (let i = 1; i < 11; i += 1)
      sketch.line([start, top + (h * i) / 11], [start + w * 0.86, top + (h * i) / 11], pens.heavy);
    sketch.rect({ x: left + 3, y: top - 4, width: 2 * w + 6, height: 4 }, plain);
    sketch.line([start, top], [start, floor], pens.cut);
  } else sketch.rect({ x: start + w, y: top, width: 10, height: h }, plain, 'frame');
  if (subject.type === 'turnstile') {
    const hub = [start, top + h * 0.22] as const;
    sketch.line(hub, [start + w * 0.9, hub[1]], pens.cut);
    sketch.line(hub, [start + w * 0.35, hub[1] + h * 0.5], pens.heavy);
    sketch.circle(hub, Math.min(2.5, w / 6), { weight: 'medium', fill: 'paper' });
  }
  if (subject.type === 'turnstileSecurity') {
    for (const side of [0, 1]) {
      const flap = { x: start + (w / 2) * side + 0.4, y: top + 2, width: w / 2 - 0.8, height: h * 0.72 };
      sketch.rect(flap, pens.onPaper);
      sketch.hatch(flap, 'glass');
    }
  }
  sketch.rect(leaf, { weight: 'hair' }, 'leaf');
  outline(sketch, leaf, subject);
  lock(sketch, id, start - body / 2, floor - h * 0.45, whole ? 1.4 : 0.9);
  return {
    lockEdge: start + w + (whole ? 3 : 10),
    away: 1,
    head: top - (whole ? 4 : 0),
    left: start,
    right: start + w,
    stops: [],
  };
}

import { device } from '../../domain/devices/devices.ts';
import { drawControl, drawInactive, drawLatch, drawSwitch, type Levels } from './hardware.ts';
import { drawHanging, drawLeaf, drawSwing, fromLock, type Leaf, lockward } from './leaf.ts';
import { type Choice, drawDelaySign, drawLock } from './locks.ts';
import type { Box, HatchPattern, Pen } from './scene.ts';
import { pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

/** What a type of opening needs on the sheet, and where its parts ended up. */
export interface Placed {
  readonly lockEdge: number;
  readonly away: 1 | -1;
  readonly head: number;
  readonly left: number;
  readonly right: number;
  /** Extra ends for the width dimension: where leaves meet. */
  readonly stops: readonly number[];
}

export function faceOf({ facts, type }: Subject): number {
  if (type === 'gateSwing' || type === 'gateSlide') return 4;
  const faces = { hollowMetal: 2, wood: 2.25, aluminium: 1.75, none: 0, posts: 4, track: 1.5 } as const;
  return facts.frameMaterial === undefined ? 2 : faces[facts.frameMaterial];
}

const frameHatch: Partial<Record<NonNullable<Subject['facts']['frameMaterial']>, HatchPattern>> = {
  hollowMetal: 'metal',
  wood: 'wood',
  aluminium: 'aluminium',
};

/** Jambs and head around a clear opening. A gate has posts and nothing overhead. */
export function drawFrame(sketch: Sketch, clear: Box, face: number, subject: Subject): void {
  if (face === 0) return;
  const { frameMaterial } = subject.facts;
  const pen: Pen = frameMaterial === undefined ? pens.unknown : pens.medium;
  const gate = subject.type === 'gateSwing' || frameMaterial === 'posts';
  const rise = gate ? 4 : face;
  const jamb = { y: clear.y - rise, width: face, height: clear.height + rise };
  const parts: Box[] = [
    { ...jamb, x: clear.x - face },
    { ...jamb, x: clear.x + clear.width },
  ];
  if (!gate) parts.push({ x: clear.x, y: clear.y - face, width: clear.width, height: face });
  for (const part of parts) {
    sketch.rect(part, { ...pen, fill: 'paper' }, 'frame');
    const pattern = frameMaterial === undefined ? undefined : frameHatch[frameMaterial];
    if (pattern !== undefined) sketch.hatch(part, pattern, 0.07);
  }
}

/** All doors and gates whose leaves swing. `left` is the left end of the frame. */
export function drawSwinging(
  sketch: Sketch,
  subject: Subject,
  choice: Choice | undefined,
  left: number,
  floor: number,
): Placed {
  const face = faceOf(subject);
  const { inches: width } = subject.width;
  const { inches: height } = subject.height;
  const post = subject.leaves === 2 && subject.facts.mullion === true ? 2 : 0;
  const clear: Box = { x: left + face, y: floor - height, width: subject.leaves * width + post, height };
  const leaves = leavesOf(subject, clear, width);
  const levels: Levels = {
    head: clear.y,
    floor,
    hardware: Math.max(
      clear.y + Math.min(7, height * 0.3),
      Math.min(floor - Math.min(7, height * 0.3), floor - subject.hardware.inches),
    ),
  };

  drawFrame(sketch, clear, face, subject);
  if (post > 0)
    sketch.rect(
      { x: clear.x + width, y: clear.y, width: post, height },
      { weight: 'medium', fill: 'paper' },
      'frame',
    );
  for (const leaf of leaves) {
    drawLeaf(sketch, leaf, subject);
    askOnLeaf(sketch, leaf, subject);
  }
  for (const leaf of leaves) {
    drawSwing(
      sketch,
      leaf,
      subject,
      subject.type === 'doubleEgressPair' ? !leaf.active : subject.towardEgress,
    );
    if (subject.type === 'doubleActing')
      drawSwing(
        sketch,
        { ...leaf, box: { ...leaf.box, y: leaf.box.y + 2, height: leaf.box.height - 4 } },
        subject,
        true,
      );
    if (subject.type !== 'balanced') drawHanging(sketch, leaf, subject.facts, leaf.active);
    if (subject.type === 'balanced') balancedArm(sketch, leaf);
    drawControl(sketch, leaf, subject, levels);
    // A leaf on manual bolts carries no bar: nobody may think that it opens.
    const bolted = !leaf.active && subject.facts.inactiveBolts === 'manualFlush';
    const switched = choice?.release === 'doorSwitch' && !bolted;
    if (switched) drawSwitch(sketch, leaf, subject, levels);
    if (leaf.active && choice !== undefined && device(choice.deviceId).replacesLatch) continue;
    // Where push and pull is all there is, the bar with the switch takes the place of the plate.
    if (switched && subject.facts.latch === 'pushPull') continue;
    if (leaf.active || subject.type === 'doubleEgressPair') drawLatch(sketch, leaf, subject, levels);
    else drawInactive(sketch, leaf, subject, levels);
  }
  if (subject.leaves === 2 && subject.facts.coordinator === true) {
    sketch.rect(
      { x: clear.x + 2, y: clear.y, width: Math.max(1, clear.width - 4), height: 1.2 },
      pens.onPaper,
    );
    sketch.label([clear.x + 4, clear.y + 0.6], 'Coordinator');
  }
  const active = leaves.find((leaf) => leaf.active) ?? leaves[0];
  if (choice !== undefined) {
    drawLock(sketch, choice, { leaves, levels, face });
    if (choice.release === 'delayed' && active !== undefined) drawDelaySign(sketch, active, levels);
  }
  // On a pair the wall beside the active leaf's hinges is the nearest wall there is.
  const lockSide = active === undefined ? 1 : subject.leaves === 2 ? lockwardWall(active) : lockward(active);
  return {
    lockEdge:
      subject.leaves === 2 || active === undefined
        ? lockSide === 1
          ? clear.x + clear.width
          : clear.x
        : fromLock(active, 0),
    away: lockSide,
    head: clear.y - face,
    left: clear.x,
    right: clear.x + clear.width,
    stops: subject.leaves === 2 ? [clear.x + width + post / 2] : [],
  };
}

/** One large question mark where type, hand or material is not known: the broken lines alone could be missed. */
function askOnLeaf(sketch: Sketch, { box }: Leaf, { facts }: Subject): void {
  if (facts.doorType !== undefined && facts.handing !== undefined && facts.leafMaterial !== undefined) return;
  const size = Math.min(0.4 * sketch.scale, box.width * 0.5, box.height * 0.3);
  sketch.text([box.x + box.width / 2, box.y + box.height * 0.3], '?', size, { anchor: 'middle' });
}

const lockwardWall = (leaf: Leaf): 1 | -1 => (leaf.hingeLeft ? -1 : 1);

function leavesOf(subject: Subject, clear: Box, width: number): Leaf[] {
  const box = (x: number): Box => ({ x, y: clear.y, width, height: clear.height });
  if (subject.leaves === 1) return [{ box: box(clear.x), hingeLeft: subject.hingeLeft, active: true }];
  return [
    { box: box(clear.x), hingeLeft: true, active: subject.hingeLeft },
    { box: box(clear.x + clear.width - width), hingeLeft: false, active: !subject.hingeLeft },
  ];
}

/** The pivot of a balanced door stands a third in from the edge, on an arm at head and floor. */
function balancedArm(sketch: Sketch, leaf: Leaf): void {
  const { box } = leaf;
  for (const y of [box.y + 1.5, box.y + box.height - 1.5]) {
    const pivot = leaf.hingeLeft ? box.x + box.width / 3 : box.x + (box.width * 2) / 3;
    sketch.line([leaf.hingeLeft ? box.x : box.x + box.width, y], [pivot, y], pens.heavy);
    sketch.circle([pivot, y], 1.3, { weight: 'medium', fill: 'paper' });
  }
  sketch.label(
    [leaf.hingeLeft ? box.x + box.width / 3 : box.x + (box.width * 2) / 3, box.y + box.height - 1.5],
    'Balanced pivot',
  );
}

import type { FactValues } from '../../domain/model/fields.ts';
import type { Box, HatchPattern, Pen } from './scene.ts';
import { centered, inset, pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

export interface Leaf {
  readonly box: Box;
  readonly hingeLeft: boolean;
  readonly active: boolean;
}

/** A place in a leaf, so many inches from its hinge edge or from its lock edge. */
export const fromHinge = ({ box, hingeLeft }: Leaf, inches: number): number =>
  hingeLeft ? box.x + inches : box.x + box.width - inches;
export const fromLock = ({ box, hingeLeft }: Leaf, inches: number): number =>
  hingeLeft ? box.x + box.width - inches : box.x + inches;
/** +1 when the lock edge lies to the right. */
export const lockward = ({ hingeLeft }: Leaf): 1 | -1 => (hingeLeft ? 1 : -1);

const solidHatch: Partial<Record<NonNullable<FactValues['leafMaterial']>, HatchPattern>> = {
  hollowMetal: 'metal',
  woodMineralCore: 'mineral',
  woodSolidCore: 'wood',
  woodHollowCore: 'wood',
  rollingSteel: 'slats',
};
const stileWidths = { aluminiumNarrow: 2.125, aluminiumMedium: 3.5, aluminiumWide: 5 } as const;

/** Outline, material, glass. Edges whose measure nobody took are dashed: sides for width, ends for height. */
export function drawLeaf(sketch: Sketch, leaf: Leaf, subject: Subject): void {
  const { box } = leaf;
  sketch.rect(box, { weight: 'hair', fill: 'paper' }, 'leaf');
  fill(sketch, leaf, subject.facts);
  outline(sketch, box, subject);
}

export function outline(sketch: Sketch, box: Box, { width, height, facts }: Subject): void {
  const typed = facts.doorType !== undefined;
  const pen = (known: boolean): Pen => (known && typed ? pens.medium : pens.unknown);
  const [left, right, top, bottom] = [box.x, box.x + box.width, box.y, box.y + box.height];
  sketch.line([left, top], [right, top], pen(height.known));
  sketch.line([left, bottom], [right, bottom], pen(height.known));
  sketch.line([left, top], [left, bottom], pen(width.known));
  sketch.line([right, top], [right, bottom], pen(width.known));
}

function fill(sketch: Sketch, leaf: Leaf, facts: FactValues): void {
  const { box } = leaf;
  switch (facts.leafMaterial) {
    case undefined:
      return glazing(sketch, leaf, facts);
    case 'aluminiumNarrow':
    case 'aluminiumMedium':
    case 'aluminiumWide':
      return stileAndRail(sketch, box, stileWidths[facts.leafMaterial], 'aluminium');
    case 'glazedFireAssembly':
      return stileAndRail(sketch, box, 3, 'metal');
    case 'glassFrameless':
      return frameless(sketch, leaf, facts);
    case 'gateFramed':
      sketch.hatch(inset(box, Math.min(2, box.width / 8)), 'pickets');
      return sketch.rect(inset(box, Math.min(2, box.width / 8)), pens.thin);
    case 'chainLink':
      sketch.hatch(inset(box, 1.5), 'mesh');
      return sketch.rect(inset(box, 1.5), pens.thin);
    default: {
      const pattern = solidHatch[facts.leafMaterial];
      if (pattern !== undefined) sketch.hatch(box, pattern, pattern === 'metal' ? 0.2 : 0.12);
      return glazing(sketch, leaf, facts);
    }
  }
}

/** Glass let into a solid leaf. */
function glazing(sketch: Sketch, leaf: Leaf, facts: FactValues): void {
  const { box } = leaf;
  const edge = Math.min(6, box.width / 5);
  const lite: Box | undefined = {
    none: undefined,
    narrow: centered(
      fromLock(leaf, edge + 2),
      box.y + box.height * 0.36,
      Math.min(5, box.width / 4),
      box.height * 0.36,
    ),
    half: { x: box.x + edge, y: box.y + edge, width: box.width - 2 * edge, height: box.height * 0.4 },
    full: { x: box.x + edge, y: box.y + edge, width: box.width - 2 * edge, height: box.height - 2.6 * edge },
  }[facts.visionPanel ?? 'none'];
  if (lite === undefined) return;
  sketch.rect(lite, pens.onPaper);
  sketch.rect(inset(lite, Math.min(0.8, lite.width / 6)), pens.hair);
  sketch.hatch(lite, 'glass');
  sketch.label(
    [lite.x + lite.width * 0.75, lite.y + lite.height * 0.12],
    facts.visionPanel === 'narrow' ? 'Narrow glass' : 'Glass',
  );
}

function stileAndRail(sketch: Sketch, box: Box, stile: number, pattern: HatchPattern): void {
  const side = Math.min(stile, box.width / 4);
  const [top, foot] = [Math.min(stile * 1.3, box.height / 6), Math.min(10, box.height / 6)];
  const glass = {
    x: box.x + side,
    y: box.y + top,
    width: box.width - 2 * side,
    height: box.height - top - foot,
  };
  sketch.hatch(box, pattern);
  sketch.rect(glass, pens.onPaper);
  sketch.hatch(glass, 'glass');
}

function frameless(sketch: Sketch, leaf: Leaf, facts: FactValues): void {
  const { box } = leaf;
  const high = Math.min(4, box.height / 6);
  const top = { ...box, height: high };
  const bottom = { ...box, y: box.y + box.height - high, height: high };
  sketch.hatch(box, 'glass');
  if (facts.glassRails === 'top' || facts.glassRails === 'both') rail(sketch, top);
  if (facts.glassRails === 'both') rail(sketch, bottom);
  if (facts.glassRails === undefined || facts.glassRails === 'none') {
    const pen: Pen = facts.glassRails === undefined ? { ...pens.onPaper, dash: 'unknown' } : pens.onPaper;
    const patch = Math.min(7, box.width / 3);
    const x = leaf.hingeLeft ? box.x : box.x + box.width - patch;
    for (const y of [top.y, bottom.y]) sketch.rect({ x, y, width: patch, height: Math.min(2.2, high) }, pen);
  }
}

function rail(sketch: Sketch, box: Box): void {
  sketch.rect(box, pens.onPaper);
  sketch.hatch(box, 'aluminium');
}

/** What the leaf hangs on, at its hinge edge. */
export function drawHanging(sketch: Sketch, leaf: Leaf, facts: FactValues, labeled: boolean): void {
  const { box } = leaf;
  const edge = fromHinge(leaf, 0);
  const heights = (box.height > 90 ? [0.1, 0.37, 0.63, 0.88] : [0.1, 0.48, 0.88]).map(
    (part) => box.y + box.height * part,
  );
  const label = (text: string, y: number) => labeled && sketch.label([edge, y], text);
  const last = heights.at(-1) ?? box.y;
  switch (facts.hinges) {
    case undefined:
      for (const y of heights) sketch.rect(centered(edge, y, 1, 4.5), { weight: 'thin', dash: 'unknown' });
      return;
    case 'butt':
      for (const y of heights) sketch.rect(centered(edge, y, 1, 4.5), { weight: 'thin', fill: 'ink' });
      label('Butt hinges', last);
      return;
    case 'swingClear':
      for (const y of heights) {
        sketch.rect(centered(edge - lockward(leaf) * 1, y, 3, 4.5), { weight: 'thin', fill: 'paper' });
        sketch.circle([edge - lockward(leaf) * 1.6, y], 0.7, { weight: 'thin', fill: 'ink' });
      }
      label('Swing-clear hinges', last);
      return;
    case 'continuous':
      sketch.rect(
        { x: edge - 0.5, y: box.y + 0.5, width: 1, height: box.height - 1 },
        { weight: 'thin', fill: 'ink' },
      );
      label('Continuous hinge', last);
      return;
    case 'pivot':
      for (const y of [box.y + 1.2, box.y + box.height - 1.2])
        sketch.circle([fromHinge(leaf, 1.6), y], 1.2, { weight: 'thin', fill: 'ink' });
      label('Pivots', box.y + box.height - 1.2);
      return;
    case 'track':
      sketch.rect(
        { x: box.x, y: box.y - 1.6, width: box.width, height: 1.6 },
        { weight: 'thin', fill: 'paper' },
      );
      for (const part of [0.2, 0.8])
        sketch.circle([box.x + box.width * part, box.y - 0.8], 0.8, { weight: 'thin', fill: 'ink' });
      label('Track', box.y - 0.8);
      return;
  }
}

/** The two lines that meet at the hinges; broken when the leaf swings away from the one who looks. */
export function drawSwing(sketch: Sketch, leaf: Leaf, subject: Subject, toward = subject.towardEgress): void {
  const { box } = leaf;
  const unknown = subject.facts.handing === undefined && subject.facts.doorType !== 'doubleActing';
  const pen: Pen =
    unknown || toward === undefined
      ? { weight: 'hair', dash: 'unknown' }
      : toward
        ? pens.hair
        : { weight: 'hair', dash: 'hidden' };
  const apex = [fromHinge(leaf, 0), box.y + box.height / 2] as const;
  sketch.line([fromLock(leaf, 0), box.y], apex, pen);
  sketch.line([fromLock(leaf, 0), box.y + box.height], apex, pen);
}

import type { FactValue, FactValues } from '../../domain/model/fields.ts';
import { fromHinge, fromLock, type Leaf, lockward } from './leaf.ts';
import type { Pen } from './scene.ts';
import { centered, pens, type Sketch } from './sketch.ts';
import type { Subject } from './subject.ts';

/** Heights in the drawing that hardware refers to. */
export interface Levels {
  readonly head: number;
  readonly floor: number;
  readonly hardware: number;
}

const onLeaf: Pen = { weight: 'medium', fill: 'paper' };

/** A lever on its rose or plate, pointing to the hinges. */
function lever(sketch: Sketch, leaf: Leaf, y: number, plate: 'rose' | 'plate', pen: Pen = onLeaf): void {
  const x = fromLock(leaf, Math.min(2.75, leaf.box.width / 4));
  const reach = Math.min(4.5, leaf.box.width / 3) * -lockward(leaf);
  if (plate === 'rose') sketch.circle([x, y], 1.6, pen);
  else sketch.rect(centered(x, y + 0.5, 2.4, 8), pen);
  sketch.line([x, y], [x + reach, y], { ...pen, weight: 'heavy' });
}

function turn(sketch: Sketch, leaf: Leaf, y: number): void {
  const x = fromLock(leaf, Math.min(2.75, leaf.box.width / 4));
  sketch.circle([x, y], 1.1, onLeaf);
  sketch.line([x, y - 1.1], [x, y + 1.1], pens.medium);
}

/** The push bar across the leaf, with its case at the lock edge. */
export function bar(sketch: Sketch, leaf: Leaf, y: number, pen: Pen = onLeaf): void {
  const length = leaf.box.width * 0.78;
  const end = fromLock(leaf, Math.min(4.5, leaf.box.width / 5));
  const start = end - lockward(leaf) * (length - 4);
  sketch.rect({ x: Math.min(start, end), y: y - 1.2, width: Math.abs(end - start), height: 2.4 }, pen);
  sketch.rect(centered((end + fromLock(leaf, 0.6)) / 2, y, Math.abs(end - fromLock(leaf, 0.6)), 5.5), pen);
}

function rods(sketch: Sketch, leaf: Leaf, levels: Levels, bottom: boolean): void {
  const x = fromLock(leaf, Math.min(2.4, leaf.box.width / 8));
  const ends = bottom ? [leaf.box.y, leaf.box.y + leaf.box.height] : [leaf.box.y];
  for (const end of ends) {
    sketch.line([x, levels.hardware], [x, end], pens.medium);
    sketch.rect({ x: x - 1, y: end === leaf.box.y ? end : end - 3, width: 2, height: 3 }, onLeaf);
  }
}

/** What holds the leaf shut today, as seen from the egress side. Says whether a push bar is drawn. */
export function drawLatch(sketch: Sketch, leaf: Leaf, subject: Subject, levels: Levels): void {
  const { facts } = subject;
  const y = levels.hardware;
  const handle: readonly [number, number] = [fromLock(leaf, Math.min(2.75, leaf.box.width / 4)), y];
  switch (facts.latch) {
    case undefined:
      if (facts.panicPresent) break;
      return lever(sketch, leaf, y, 'rose', { weight: 'thin', dash: 'unknown' });
    case 'bored':
      lever(sketch, leaf, y, 'rose');
      return sketch.label(handle, 'Bored latch');
    case 'mortise':
    case 'mortiseDeadbolt':
      lever(sketch, leaf, y, 'plate');
      if (facts.latch === 'mortiseDeadbolt') turn(sketch, leaf, y - 6);
      return sketch.label(handle, facts.latch === 'mortise' ? 'Mortise latch' : 'Mortise latch, deadbolt');
    case 'boredPlusDeadbolt':
      turn(sketch, leaf, y - 6);
      lever(sketch, leaf, y, 'rose');
      return sketch.label(handle, 'Latch and deadbolt');
    case 'deadboltOnly':
    case 'hookbolt':
      turn(sketch, leaf, y);
      return sketch.label(handle, facts.latch === 'hookbolt' ? 'Hookbolt' : 'Deadbolt only');
    case 'deadlatch':
      sketch.rect(centered(fromLock(leaf, 1.1), y, 1.4, 6), onLeaf);
      sketch.line([fromLock(leaf, 1.1), y], [fromLock(leaf, 5), y], pens.heavy);
      return sketch.label([fromLock(leaf, 1.1), y], 'Deadlatch, paddle');
    case 'patch': {
      const size = Math.min(6.5, leaf.box.width / 3);
      sketch.rect(centered(fromLock(leaf, size / 2), leaf.box.y + leaf.box.height - 1.5, size, 3), onLeaf);
      return sketch.label([fromLock(leaf, size / 2), leaf.box.y + leaf.box.height - 1.5], 'Patch lock');
    }
    case 'roller':
      sketch.rect(centered(fromLock(leaf, 2.2), y, 1.4, 10), onLeaf);
      return sketch.label([fromLock(leaf, 2.2), y], 'Pull, roller catch');
    case 'pushPull':
      sketch.rect(centered(fromLock(leaf, 2.2), y, 2.6, 12), onLeaf);
      return sketch.label([fromLock(leaf, 2.2), y], 'Push plate, no latch');
    case 'gateLock':
      sketch.rect(centered(fromLock(leaf, 2.5), y, 4, 7), onLeaf);
      return sketch.label([fromLock(leaf, 2.5), y], 'Gate lock');
    case 'operatorLock':
      return;
    default:
      break;
  }
  pushBar(sketch, leaf, subject, levels);
}

function pushBar(sketch: Sketch, leaf: Leaf, { facts }: Subject, levels: Levels): void {
  const y = levels.hardware;
  const rodded = facts.latch === 'verticalRods' || (facts.latch === 'rimPlusRods' && !leaf.active);
  if (rodded) rods(sketch, leaf, levels, facts.lessBottomRod !== true);
  bar(sketch, leaf, y);
  if (leaf.active)
    sketch.label(
      [fromHinge(leaf, leaf.box.width / 2), y],
      facts.panicPresent === false ? 'Exit device' : 'Push bar',
    );
}

/** Latches with a lever or bar that the switch can sit in; elsewhere the switch brings its bar. */
const takesSwitch: ReadonlySet<FactValues['latch']> = new Set([
  'bored',
  'mortise',
  'mortiseDeadbolt',
  'boredPlusDeadbolt',
  'deadlatch',
  'rimExit',
  'verticalRods',
  'rimPlusRods',
  'railExit',
]);

/** The switch by which people leave: in the lever or bar that is there, or in a bar of its own. */
export function drawSwitch(sketch: Sketch, leaf: Leaf, { facts }: Subject, levels: Levels): void {
  const y = levels.hardware;
  if (takesSwitch.has(facts.latch) || facts.panicPresent === true) {
    const at = [fromLock(leaf, Math.min(5.5, leaf.box.width / 3)), y] as const;
    sketch.rect(centered(at[0], at[1], 1.2, 1.2), pens.chosen);
    return sketch.label(at, 'Switch in lever or bar');
  }
  bar(sketch, leaf, y, { ...pens.chosen, fill: 'paper' });
  sketch.label([fromHinge(leaf, leaf.box.width / 2), y], 'Bar with a switch');
}

/** Bolts of the inactive leaf, at its meeting edge. */
export function drawInactive(sketch: Sketch, leaf: Leaf, subject: Subject, levels: Levels): void {
  const bolts = subject.facts.inactiveBolts;
  if (bolts === 'rods' || bolts === 'rim') {
    if (bolts === 'rods') rods(sketch, leaf, levels, true);
    return bar(sketch, leaf, levels.hardware);
  }
  if (bolts === 'none') return;
  const pen: Pen =
    bolts === undefined ? { weight: 'thin', dash: 'unknown' } : { weight: 'thin', fill: 'ink' };
  const x = fromLock(leaf, Math.min(1.2, leaf.box.width / 8));
  const high = Math.min(7, leaf.box.height / 5);
  sketch.rect({ x: x - 0.5, y: leaf.box.y, width: 1, height: high }, pen);
  sketch.rect({ x: x - 0.5, y: leaf.box.y + leaf.box.height - high, width: 1, height: high }, pen);
  if (bolts !== undefined) {
    const words = {
      manualFlush: 'Manual bolts',
      automaticFlush: 'Automatic bolts',
      constantLatching: 'Self-latching bolts',
    } as const;
    sketch.label([x, leaf.box.y + leaf.box.height - high / 2], words[bolts]);
  }
}

/** Closer, operator, fire label: at the head and on the hinge edge. */
export function drawControl(sketch: Sketch, leaf: Leaf, subject: Subject, levels: Levels): void {
  const { facts } = subject;
  const { box } = leaf;
  const powered = facts.operator !== undefined && facts.operator !== 'none';
  if (powered) {
    const words = {
      lowEnergy: 'Low-energy operator',
      fullPower: 'Full-power operator',
      powerAssist: 'Power assist',
    } as const;
    const length = Math.min(box.width, 30);
    const x = (fromHinge(leaf, 0) + fromHinge(leaf, length)) / 2;
    sketch.rect(centered(x, levels.head - 1, length, 4.5), onLeaf);
    sketch.path(
      [
        [x, levels.head + 1.25],
        [fromHinge(leaf, length * 0.85), levels.head + 3.5],
      ],
      pens.medium,
    );
    sketch.label([x, levels.head - 1], words[facts.operator]);
  } else if (facts.closing === 'selfClosing' || facts.closing === 'automaticClosing') {
    const length = Math.min(11, box.width / 3);
    const x = fromHinge(leaf, length * 0.5 + Math.min(3, box.width / 10));
    sketch.rect(centered(x, box.y + 3.2, length, 2.4), onLeaf);
    sketch.path(
      [
        [x, box.y + 2],
        [fromHinge(leaf, length * 1.7), box.y + 0.6],
        [fromHinge(leaf, length * 1.2), levels.head],
      ],
      pens.medium,
    );
    if (leaf.active)
      sketch.label([x, box.y + 3.2], facts.closing === 'selfClosing' ? 'Closer' : 'Hold-open, closer');
  }
  fireLabel(sketch, leaf, subject);
}

/** As short as a drawing has room for. */
const labelInWords: Readonly<Record<FactValue<'fireLabel'>, string>> = {
  seen: 'label seen',
  illegible: 'label illegible',
  removed: 'label removed',
  none: 'no label',
};

function fireLabel(sketch: Sketch, leaf: Leaf, { facts }: Subject): void {
  const minutes = facts.fireRatingMin;
  if (minutes === undefined || minutes === 0 || !leaf.active) return;
  const at = [
    fromHinge(leaf, Math.min(1.4, leaf.box.width / 8)),
    leaf.box.y + leaf.box.height * 0.27,
  ] as const;
  const label = facts.fireLabel;
  if (label !== 'none' && label !== 'removed')
    sketch.rect(
      centered(at[0], at[1], 1.2, 3.6),
      label === 'seen' ? { weight: 'thin', fill: 'ink' } : { weight: 'thin', dash: 'unknown' },
    );
  sketch.label(at, `${minutes} min, ${label === undefined ? 'label ?' : labelInWords[label]}`);
}

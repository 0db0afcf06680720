import { type DeviceId, devices, type FailMode } from '../../domain/devices/devices.ts';
import type { Release } from '../../domain/devices/candidates.ts';
import { bar, type Levels } from './hardware.ts';
import { fromHinge, fromLock, type Leaf, lockward } from './leaf.ts';
import type { Box, Pen } from './scene.ts';
import { centered, pens, type Sketch } from './sketch.ts';
import { typical } from './subject.ts';

export interface Choice {
  readonly deviceId: DeviceId;
  readonly failMode: FailMode;
  readonly release: Release;
}

/** Only electrified parts are inked: a lock without power stays open in outline. */
export function penOfDevice(id: DeviceId): Pen {
  return devices[id].family === 'mechanical' ? { ...pens.chosen, fill: 'paper' } : pens.chosen;
}

interface Opening {
  readonly leaves: readonly Leaf[];
  readonly levels: Levels;
  /** Face width of the frame at the lock edge, inches. */
  readonly face: number;
}

/** The electrified part on a swinging opening, inked; broken lines when it is inside leaf or frame. */
export function drawLock(sketch: Sketch, choice: Choice, opening: Opening): void {
  const active = opening.leaves.find((leaf) => leaf.active);
  if (active === undefined) return;
  const { levels } = opening;
  const y = levels.hardware;
  const set = (box: Box, hidden = false) => {
    sketch.rect(box, hidden ? pens.chosenHidden : penOfDevice(choice.deviceId), 'lock');
    sketch.label([box.x + box.width / 2, box.y + box.height / 2], devices[choice.deviceId].name);
  };
  const atHead = Math.min(11, active.box.width / 2);
  const headX = fromLock(active, atHead / 2 + 0.5);
  switch (choice.deviceId) {
    case 'strikeMortise':
    case 'strikeCylindrical':
    case 'strikeRim':
      return set(
        centered(
          fromLock(active, 0) + lockward(active) * 0.9,
          y,
          1.5,
          choice.deviceId === 'strikeCylindrical' ? 3.4 : 5.4,
        ),
      );
    case 'magnet':
    case 'delayedMagnet':
      for (const other of opening.leaves)
        if (!other.active)
          sketch.rect(
            centered(fromLock(other, atHead / 2 + 0.5), levels.head + 1.4, atHead, 2.8),
            pens.chosen,
          );
      return set(centered(headX, levels.head + 1.4, atHead, 2.8));
    case 'shearMagnet':
      return set(centered(headX, levels.head - 0.5, atHead, 1.8), true);
    case 'boltSolenoid':
    case 'boltMotor':
      sketch.rect(centered(headX, levels.head, Math.min(8, atHead), 1.6), pens.chosenHidden);
      return set(centered(headX, levels.head + 0.9, 1, 2.2));
    case 'glassPatchLock':
      return set(
        centered(fromLock(active, atHead * 0.3), active.box.y + active.box.height - 1.75, atHead * 0.6, 3.5),
      );
    case 'glassRailExit': {
      sketch.line([fromLock(active, 6), y], [fromHinge(active, 5), y], pens.cut);
      sketch.line([fromLock(active, 6), y], [fromLock(active, 6), active.box.y + 3.5], pens.cut);
      return set({ ...active.box, height: 3.5 });
    }
    case 'mortiseLock':
      return set(
        centered(
          fromLock(active, Math.min(2.6, active.box.width / 5)),
          y,
          Math.min(4, active.box.width / 3),
          8,
        ),
        true,
      );
    case 'cylindricalLock':
      return set(centered(fromLock(active, Math.min(2.6, active.box.width / 5)), y, 2.4, 2.4), true);
    case 'narrowStileLatch':
      return set(centered(fromLock(active, 0.9), y, 1.1, 7));
    case 'exitTrim':
      // Lever and plate are on the secure side.
      return set(centered(fromLock(active, Math.min(2.75, active.box.width / 5)), y + 3.4, 2.4, 6.5), true);
    case 'latchRetractionMotor':
    case 'latchRetractionSolenoid':
    case 'delayedExitDevice':
      bar(sketch, active, y);
      return set(
        centered(
          fromLock(active, Math.min(2.5, active.box.width / 8)),
          y,
          Math.min(3, active.box.width / 6),
          4,
        ),
      );
    case 'gateLock':
      return set(centered(fromLock(active, 2.2), y, 4.2, 7));
    case 'batteryLock':
      sketch.line(
        [fromLock(active, 2.75), y],
        [fromLock(active, Math.min(7.5, active.box.width / 2)), y],
        pens.heavy,
      );
      return set(centered(fromLock(active, Math.min(2.75, active.box.width / 5)), y - 1, 2.6, 9));
    case 'mechanicalLock':
      return set(centered(fromLock(active, Math.min(2.75, active.box.width / 5)), y + 4, 1.6, 1.6));
    case 'noLock':
      return set(centered(fromLock(active, Math.min(4, active.box.width / 4)), y, 3.5, 15));
    case 'operatorControl':
      return set(centered(headX, levels.head - 2, atHead, 3));
    case 'detentionLock':
      return set(
        centered(
          fromLock(active, Math.min(4, active.box.width / 4)),
          y,
          Math.min(6, active.box.width / 3),
          9,
        ),
      );
  }
}

export interface WallPlace {
  /** Where on the wall beside the lock edge things are mounted, and which way the wall runs on. */
  readonly x: number;
  readonly away: 1 | -1;
  readonly floor: number;
  readonly head: number;
  readonly center: number;
  /** Half the clear width. */
  readonly half: number;
  /** Nothing is mounted higher than this above the floor. */
  readonly highest: number;
}

const buttons: ReadonlySet<Release> = new Set<Release>(['sensor', 'buttonOnly']);

/** Everything on the wall and above the door on the egress side, and the reader behind, broken. */
export function drawAround(
  sketch: Sketch,
  choice: Choice | undefined,
  place: WallPlace,
  readers: string | undefined,
  exitSign: boolean,
): void {
  const release = choice?.release;
  const reach = (height: number) => place.floor - Math.min(height, place.highest);
  const plate = sketch.seen(2.6, 0.075);
  const high = sketch.seen(4.6, 0.12);
  const step = sketch.seen(3, 0.085);
  if (release === 'sensor') sensor(sketch, place);
  if (exitSign) {
    sketch.rect(
      centered(place.center - place.away * Math.min(9, place.half), place.head - 6, 10, 4),
      pens.onPaper,
    );
    sketch.label([place.center - place.away * Math.min(9, place.half), place.head - 6], 'Exit sign');
  }
  if (release !== undefined && buttons.has(release)) {
    const x = place.x + place.away * (step + plate + 1.4);
    sketch.rect(centered(x, reach(typical.button), plate, high), { ...pens.chosen, fill: 'paper' });
    sketch.circle([x, reach(typical.button)], plate * 0.3, pens.chosen);
    sketch.line([x, reach(typical.button) + high / 2], [x, place.floor], pens.hair);
    sketch.label([x, reach(typical.button)], `Push to exit, ${typical.buttonRange}`);
  }
  if (readers !== undefined && readers !== 'none') {
    const x = place.x + place.away * step * 0.9;
    sketch.rect(centered(x, reach(typical.reader), plate, high), pens.hidden);
    sketch.label([x, reach(typical.reader) - high * 0.4], 'Reader, secure side');
    if (readers !== 'secure') {
      sketch.rect(centered(x, reach(typical.reader + 9), plate, high), pens.onPaper);
      sketch.label(
        [x, reach(typical.reader + 9)],
        readers === 'both' ? 'Reader, egress side' : 'Reader, records only',
      );
    }
  }
}

/** An exit sensor above the door, with the edges of its field. */
function sensor(sketch: Sketch, place: WallPlace): void {
  const [x, y] = [place.center + place.away * Math.min(8, place.half), place.head - 5];
  sketch.rect(centered(x, y, 7, 2.6), { ...pens.chosen, fill: 'paper' });
  for (const side of [-1, 1])
    sketch.line([x + side * 2.5, y + 1.3], [x + side * 7, y + 14], { weight: 'hair', dash: 'hidden' });
  sketch.label([x, y], 'Exit sensor');
}

/** The sign a delayed door must carry, above its hardware. */
export function drawDelaySign(sketch: Sketch, leaf: Leaf, levels: Levels): void {
  const width = Math.min(10, leaf.box.width * 0.5);
  const x = fromHinge(leaf, leaf.box.width / 2);
  const y = levels.hardware - 8;
  sketch.rect(centered(x, y, width, 4.5), pens.onPaper);
  for (const row of [-1.1, 0, 1.1])
    sketch.line([x - width * 0.38, y + row], [x + width * 0.38, y + row], pens.thin);
  sketch.label([x + width * 0.3, y], 'Delay sign');
}

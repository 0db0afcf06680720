import type { RuleCase } from '../rule.ts';
import { R54Cases } from './R-54-stair-side-only-with-a-latching-lock.cases.ts';
import { R55Cases } from './R-55-all-stair-doors-released-together.cases.ts';
import { R56Cases } from './R-56-alarm-and-power-loss-free-the-stair-side.cases.ts';
import { R57Cases } from './R-57-local-four-story-limit.cases.ts';
import { R58Cases } from './R-58-nfpa-stairs-let-people-back-in.cases.ts';
import { R59Cases } from './R-59-no-mechanical-lock-on-the-stair-side.cases.ts';
import { R60Cases } from './R-60-the-way-into-the-stair-stays-free.cases.ts';
import { R61Cases } from './R-61-discharge-door-free-from-the-stair.cases.ts';
import { R62Cases } from './R-62-no-reader-on-the-stair-side-of-the-way-out.cases.ts';
import { R63Cases } from './R-63-roof-nobody-uses.cases.ts';
import { R64Cases } from './R-64-occupied-roof-is-a-room.cases.ts';
import { R65Cases } from './R-65-way-out-over-the-roof.cases.ts';
import { R66Cases } from './R-66-gate-on-the-way-to-the-street.cases.ts';
import { R67Cases } from './R-67-horizontal-exit.cases.ts';
import { R68Cases } from './R-68-one-delay-on-the-way-down.cases.ts';

export const stairsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-54': R54Cases,
  'R-55': R55Cases,
  'R-56': R56Cases,
  'R-57': R57Cases,
  'R-58': R58Cases,
  'R-59': R59Cases,
  'R-60': R60Cases,
  'R-61': R61Cases,
  'R-62': R62Cases,
  'R-63': R63Cases,
  'R-64': R64Cases,
  'R-65': R65Cases,
  'R-66': R66Cases,
  'R-67': R67Cases,
  'R-68': R68Cases,
};

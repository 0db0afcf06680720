import type { Rule } from '../rule.ts';
import { R54 } from './R-54-stair-side-only-with-a-latching-lock.ts';
import { R55 } from './R-55-all-stair-doors-released-together.ts';
import { R56 } from './R-56-alarm-and-power-loss-free-the-stair-side.ts';
import { R57 } from './R-57-local-four-story-limit.ts';
import { R58 } from './R-58-nfpa-stairs-let-people-back-in.ts';
import { R59 } from './R-59-no-mechanical-lock-on-the-stair-side.ts';
import { R60 } from './R-60-the-way-into-the-stair-stays-free.ts';
import { R61 } from './R-61-discharge-door-free-from-the-stair.ts';
import { R62 } from './R-62-no-reader-on-the-stair-side-of-the-way-out.ts';
import { R63 } from './R-63-roof-nobody-uses.ts';
import { R64 } from './R-64-occupied-roof-is-a-room.ts';
import { R65 } from './R-65-way-out-over-the-roof.ts';
import { R66 } from './R-66-gate-on-the-way-to-the-street.ts';
import { R67 } from './R-67-horizontal-exit.ts';
import { R68 } from './R-68-one-delay-on-the-way-down.ts';

export const stairsRules: readonly Rule[] = [
  R54,
  R55,
  R56,
  R57,
  R58,
  R59,
  R60,
  R61,
  R62,
  R63,
  R64,
  R65,
  R66,
  R67,
  R68,
];

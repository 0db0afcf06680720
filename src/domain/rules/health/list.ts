import type { Rule } from '../rule.ts';
import { R123 } from './R-123-clinical-lock.ts';
import { R124 } from './R-124-no-sensor-where-panic-hardware-is-due.ts';
import { R125 } from './R-125-delay-and-control-on-one-way.ts';
import { R126 } from './R-126-sign-at-a-delayed-door.ts';
import { R127 } from './R-127-a-way-out-through-this-room.ts';
import { R128 } from './R-128-reentry-floor-that-traps.ts';
import { R129 } from './R-129-selected-reentry.ts';
import { R130 } from './R-130-health-care-suite.ts';
import { R131 } from './R-131-smoke-barrier-across-a-corridor.ts';
import { R132 } from './R-132-detention-building.ts';
import { R133 } from './R-133-courtroom-doors.ts';
import { R134 } from './R-134-day-care.ts';
import { R167 } from './R-167-one-lock-on-a-leaf.ts';
import { R168 } from './R-168-beds-need-their-width.ts';

export const healthRules: readonly Rule[] = [
  R123,
  R124,
  R125,
  R126,
  R127,
  R128,
  R129,
  R130,
  R131,
  R132,
  R133,
  R134,
  R167,
  R168,
];

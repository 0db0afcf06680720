import type { Rule } from '../rule.ts';
import { R15 } from './R-15-one-full-set.ts';
import { R16 } from './R-16-sensor-release-in-full.ts';
import { R17 } from './R-17-switch-in-the-door-hardware.ts';
import { R18 } from './R-18-magnet-where-panic-hardware-is-needed.ts';
import { R19 } from './R-19-high-hazard-no-held-locks.ts';
import { R20 } from './R-20-standby-power-may-not-hold-people.ts';
import { R21 } from './R-21-magnet-on-a-rated-door.ts';
import { R22 } from './R-22-hospital-corridor-doors-latch.ts';
import { R23 } from './R-23-latch-and-magnet-act-as-one.ts';
import { R24 } from './R-24-both-leaves-of-a-pair.ts';
import { R25 } from './R-25-electric-bolts-on-egress-doors.ts';
import { R26 } from './R-26-a-bolt-is-no-latch-of-a-fire-door.ts';
import { R27 } from './R-27-nothing-on-the-leaf-to-open-it.ts';
import { R28 } from './R-28-sensor-tripped-from-outside.ts';
import { R29 } from './R-29-disarmed-while-the-public-is-in.ts';
import { R30 } from './R-30-listing-of-special-locks.ts';

export const magnetsRules: readonly Rule[] = [
  R15,
  R16,
  R17,
  R18,
  R19,
  R20,
  R21,
  R22,
  R23,
  R24,
  R25,
  R26,
  R27,
  R28,
  R29,
  R30,
];

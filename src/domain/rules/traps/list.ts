import type { Rule } from '../rule.ts';
import { T01 } from './T-01-strike-and-thrown-deadbolt.ts';
import { T02 } from './T-02-fail-safe-strike-on-a-labeled-door.ts';
import { T03 } from './T-03-fail-mode-is-about-the-outside.ts';
import { T05 } from './T-05-alarm-cuts-magnet-power-directly.ts';
import { T06 } from './T-06-peak-current-of-a-solenoid.ts';
import { T07 } from './T-07-conductors-over-the-hinge.ts';
import { T16 } from './T-16-preload-on-the-latch.ts';
import { T17 } from './T-17-deadlatch-in-the-keeper.ts';
import { T18 } from './T-18-grouted-frame-found-on-the-day.ts';
import { T19 } from './T-19-larger-pocket-in-a-fire-frame.ts';
import { T20 } from './T-20-magnet-on-an-in-swinging-leaf.ts';
import { T21 } from './T-21-narrow-stile-takes-no-bored-lock.ts';
import { T22 } from './T-22-head-magnet-on-a-rod-door.ts';
import { T23 } from './T-23-operator-against-the-latch.ts';
import { T24 } from './T-24-handing-from-the-wrong-side.ts';
import { T28 } from './T-28-battery-lock-and-fire-alarm.ts';
import { T29 } from './T-29-contact-on-the-inactive-leaf.ts';
import { T30 } from './T-30-request-to-exit-by-the-lever.ts';
import { T31 } from './T-31-exit-sensor-tripped-from-outside.ts';
import { T32 } from './T-32-locked-but-never-shut.ts';
import { T35 } from './T-35-pin-of-an-electric-hinge.ts';
import { T36 } from './T-36-34-in-leaf-on-butt-hinges.ts';
import { T37 } from './T-37-a-strike-needs-a-storeroom-lock.ts';
import { T38 } from './T-38-metal-door-as-a-conductor.ts';
import { T40 } from './T-40-no-strike-for-re-entry.ts';
import { T41 } from './T-41-day-schedule-on-an-intermittent-strike.ts';
import { T45 } from './T-45-operator-against-a-locked-lever.ts';
import { T46 } from './T-46-separate-deadbolt-and-bare-leaf.ts';
import { T47 } from './T-47-no-power-and-no-path.ts';

export const trapsRules: readonly Rule[] = [
  T01,
  T02,
  T03,
  T05,
  T06,
  T07,
  T16,
  T17,
  T18,
  T19,
  T20,
  T21,
  T22,
  T23,
  T24,
  T28,
  T29,
  T30,
  T31,
  T32,
  T35,
  T36,
  T37,
  T38,
  T40,
  T41,
  T45,
  T46,
  T47,
];

import type { RuleCase } from '../rule.ts';
import { T01Cases } from './T-01-strike-and-thrown-deadbolt.cases.ts';
import { T02Cases } from './T-02-fail-safe-strike-on-a-labeled-door.cases.ts';
import { T03Cases } from './T-03-fail-mode-is-about-the-outside.cases.ts';
import { T05Cases } from './T-05-alarm-cuts-magnet-power-directly.cases.ts';
import { T06Cases } from './T-06-peak-current-of-a-solenoid.cases.ts';
import { T07Cases } from './T-07-conductors-over-the-hinge.cases.ts';
import { T16Cases } from './T-16-preload-on-the-latch.cases.ts';
import { T17Cases } from './T-17-deadlatch-in-the-keeper.cases.ts';
import { T18Cases } from './T-18-grouted-frame-found-on-the-day.cases.ts';
import { T19Cases } from './T-19-larger-pocket-in-a-fire-frame.cases.ts';
import { T20Cases } from './T-20-magnet-on-an-in-swinging-leaf.cases.ts';
import { T21Cases } from './T-21-narrow-stile-takes-no-bored-lock.cases.ts';
import { T22Cases } from './T-22-head-magnet-on-a-rod-door.cases.ts';
import { T23Cases } from './T-23-operator-against-the-latch.cases.ts';
import { T24Cases } from './T-24-handing-from-the-wrong-side.cases.ts';
import { T28Cases } from './T-28-battery-lock-and-fire-alarm.cases.ts';
import { T29Cases } from './T-29-contact-on-the-inactive-leaf.cases.ts';
import { T30Cases } from './T-30-request-to-exit-by-the-lever.cases.ts';
import { T31Cases } from './T-31-exit-sensor-tripped-from-outside.cases.ts';
import { T32Cases } from './T-32-locked-but-never-shut.cases.ts';
import { T35Cases } from './T-35-pin-of-an-electric-hinge.cases.ts';
import { T36Cases } from './T-36-34-in-leaf-on-butt-hinges.cases.ts';
import { T37Cases } from './T-37-a-strike-needs-a-storeroom-lock.cases.ts';
import { T38Cases } from './T-38-metal-door-as-a-conductor.cases.ts';
import { T40Cases } from './T-40-no-strike-for-re-entry.cases.ts';
import { T41Cases } from './T-41-day-schedule-on-an-intermittent-strike.cases.ts';
import { T45Cases } from './T-45-operator-against-a-locked-lever.cases.ts';
import { T46Cases } from './T-46-separate-deadbolt-and-bare-leaf.cases.ts';
import { T47Cases } from './T-47-no-power-and-no-path.cases.ts';

export const trapsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'T-01': T01Cases,
  'T-02': T02Cases,
  'T-03': T03Cases,
  'T-05': T05Cases,
  'T-06': T06Cases,
  'T-07': T07Cases,
  'T-16': T16Cases,
  'T-17': T17Cases,
  'T-18': T18Cases,
  'T-19': T19Cases,
  'T-20': T20Cases,
  'T-21': T21Cases,
  'T-22': T22Cases,
  'T-23': T23Cases,
  'T-24': T24Cases,
  'T-28': T28Cases,
  'T-29': T29Cases,
  'T-30': T30Cases,
  'T-31': T31Cases,
  'T-32': T32Cases,
  'T-35': T35Cases,
  'T-36': T36Cases,
  'T-37': T37Cases,
  'T-38': T38Cases,
  'T-40': T40Cases,
  'T-41': T41Cases,
  'T-45': T45Cases,
  'T-46': T46Cases,
  'T-47': T47Cases,
};

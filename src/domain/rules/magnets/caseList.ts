import type { RuleCase } from '../rule.ts';
import { R15Cases } from './R-15-one-full-set.cases.ts';
import { R16Cases } from './R-16-sensor-release-in-full.cases.ts';
import { R17Cases } from './R-17-switch-in-the-door-hardware.cases.ts';
import { R18Cases } from './R-18-magnet-where-panic-hardware-is-needed.cases.ts';
import { R19Cases } from './R-19-high-hazard-no-held-locks.cases.ts';
import { R20Cases } from './R-20-standby-power-may-not-hold-people.cases.ts';
import { R21Cases } from './R-21-magnet-on-a-rated-door.cases.ts';
import { R22Cases } from './R-22-hospital-corridor-doors-latch.cases.ts';
import { R23Cases } from './R-23-latch-and-magnet-act-as-one.cases.ts';
import { R24Cases } from './R-24-both-leaves-of-a-pair.cases.ts';
import { R25Cases } from './R-25-electric-bolts-on-egress-doors.cases.ts';
import { R26Cases } from './R-26-a-bolt-is-no-latch-of-a-fire-door.cases.ts';
import { R27Cases } from './R-27-nothing-on-the-leaf-to-open-it.cases.ts';
import { R28Cases } from './R-28-sensor-tripped-from-outside.cases.ts';
import { R29Cases } from './R-29-disarmed-while-the-public-is-in.cases.ts';
import { R30Cases } from './R-30-listing-of-special-locks.cases.ts';

export const magnetsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-15': R15Cases,
  'R-16': R16Cases,
  'R-17': R17Cases,
  'R-18': R18Cases,
  'R-19': R19Cases,
  'R-20': R20Cases,
  'R-21': R21Cases,
  'R-22': R22Cases,
  'R-23': R23Cases,
  'R-24': R24Cases,
  'R-25': R25Cases,
  'R-26': R26Cases,
  'R-27': R27Cases,
  'R-28': R28Cases,
  'R-29': R29Cases,
  'R-30': R30Cases,
};

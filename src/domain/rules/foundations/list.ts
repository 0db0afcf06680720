import type { Rule } from '../rule.ts';
import { R01 } from './R-01-a-way-out-at-all-times.ts';
import { R02 } from './R-02-alarm-alone-is-no-release.ts';
import { R03 } from './R-03-a-button-alone-is-no-release.ts';
import { R04 } from './R-04-no-credential-to-leave.ts';
import { R05 } from './R-05-recording-who-leaves.ts';
import { R06 } from './R-06-free-exit-in-either-fail-mode.ts';
import { R07 } from './R-07-no-extras-on-a-free-door.ts';
import { R08 } from './R-08-one-motion-to-leave.ts';
import { R09 } from './R-09-height-of-the-hardware.ts';
import { R10 } from './R-10-unknown-role-counts-as-egress.ts';
import { R11 } from './R-11-openings-nobody-leaves-by.ts';
import { R12 } from './R-12-key-on-the-egress-side.ts';
import { R13 } from './R-13-no-magnet-in-place-of-a-key-lock.ts';
import { R14 } from './R-14-code-basis-and-amendments.ts';

export const foundationsRules: readonly Rule[] = [
  R01,
  R02,
  R03,
  R04,
  R05,
  R06,
  R07,
  R08,
  R09,
  R10,
  R11,
  R12,
  R13,
  R14,
];

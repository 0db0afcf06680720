import type { Rule } from '../rule.ts';
import { F01 } from './F-01-strike-preparation.ts';
import { F02 } from './F-02-aluminum-tube-depth.ts';
import { F03 } from './F-03-wood-jamb.ts';
import { F04 } from './F-04-leaf-thickness.ts';
import { F05 } from './F-05-header-room-for-shear.ts';
import { F06 } from './F-06-rails-on-glass.ts';
import { F07 } from './F-07-grouted-without-conduit.ts';
import { F08 } from './F-08-wire-across-the-hinge.ts';
import { F09 } from './F-09-exterior.ts';
import { F10 } from './F-10-clear-width.ts';
import { F11 } from './F-11-stops-short-of-90.ts';
import { F12 } from './F-12-headroom-under-a-magnet.ts';
import { F13 } from './F-13-latch-engagement.ts';
import { F15 } from './F-15-power-over-ethernet.ts';

export const fitRules: readonly Rule[] = [
  F01,
  F02,
  F03,
  F04,
  F05,
  F06,
  F07,
  F08,
  F09,
  F10,
  F11,
  F12,
  F13,
  F15,
];

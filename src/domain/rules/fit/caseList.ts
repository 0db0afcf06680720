import type { RuleCase } from '../rule.ts';
import { F01Cases } from './F-01-strike-preparation.cases.ts';
import { F02Cases } from './F-02-aluminum-tube-depth.cases.ts';
import { F03Cases } from './F-03-wood-jamb.cases.ts';
import { F04Cases } from './F-04-leaf-thickness.cases.ts';
import { F05Cases } from './F-05-header-room-for-shear.cases.ts';
import { F06Cases } from './F-06-rails-on-glass.cases.ts';
import { F07Cases } from './F-07-grouted-without-conduit.cases.ts';
import { F08Cases } from './F-08-wire-across-the-hinge.cases.ts';
import { F09Cases } from './F-09-exterior.cases.ts';
import { F10Cases } from './F-10-clear-width.cases.ts';
import { F11Cases } from './F-11-stops-short-of-90.cases.ts';
import { F12Cases } from './F-12-headroom-under-a-magnet.cases.ts';
import { F13Cases } from './F-13-latch-engagement.cases.ts';
import { F15Cases } from './F-15-power-over-ethernet.cases.ts';

export const fitCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'F-01': F01Cases,
  'F-02': F02Cases,
  'F-03': F03Cases,
  'F-04': F04Cases,
  'F-05': F05Cases,
  'F-06': F06Cases,
  'F-07': F07Cases,
  'F-08': F08Cases,
  'F-09': F09Cases,
  'F-10': F10Cases,
  'F-11': F11Cases,
  'F-12': F12Cases,
  'F-13': F13Cases,
  'F-15': F15Cases,
};

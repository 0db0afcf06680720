import type { RuleCase } from '../rule.ts';
import { R01Cases } from './R-01-a-way-out-at-all-times.cases.ts';
import { R02Cases } from './R-02-alarm-alone-is-no-release.cases.ts';
import { R03Cases } from './R-03-a-button-alone-is-no-release.cases.ts';
import { R04Cases } from './R-04-no-credential-to-leave.cases.ts';
import { R05Cases } from './R-05-recording-who-leaves.cases.ts';
import { R06Cases } from './R-06-free-exit-in-either-fail-mode.cases.ts';
import { R07Cases } from './R-07-no-extras-on-a-free-door.cases.ts';
import { R08Cases } from './R-08-one-motion-to-leave.cases.ts';
import { R09Cases } from './R-09-height-of-the-hardware.cases.ts';
import { R10Cases } from './R-10-unknown-role-counts-as-egress.cases.ts';
import { R11Cases } from './R-11-openings-nobody-leaves-by.cases.ts';
import { R12Cases } from './R-12-key-on-the-egress-side.cases.ts';
import { R13Cases } from './R-13-no-magnet-in-place-of-a-key-lock.cases.ts';
import { R14Cases } from './R-14-code-basis-and-amendments.cases.ts';

export const foundationsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-01': R01Cases,
  'R-02': R02Cases,
  'R-03': R03Cases,
  'R-04': R04Cases,
  'R-05': R05Cases,
  'R-06': R06Cases,
  'R-07': R07Cases,
  'R-08': R08Cases,
  'R-09': R09Cases,
  'R-10': R10Cases,
  'R-11': R11Cases,
  'R-12': R12Cases,
  'R-13': R13Cases,
  'R-14': R14Cases,
};

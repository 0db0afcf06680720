import type { Rule } from '../rule.ts';
import { R155 } from './R-155-a-bolted-leaf-gives-no-width.ts';
import { R156 } from './R-156-automatic-door-at-public-entrances.ts';
import { R157 } from './R-157-operators-on-accessible-routes.ts';
import { R158 } from './R-158-force-to-work-the-hardware.ts';
import { R159 } from './R-159-yearly-inspection.ts';
import { R160 } from './R-160-fire-department-way-in.ts';
import { R161 } from './R-161-federal-workplace-rules.ts';
import { R162 } from './R-162-federal-health-care.ts';
import { R163 } from './R-163-existing-openings.ts';
import { R164 } from './R-164-two-motions-inside-units.ts';
import { R165 } from './R-165-unlawful-lock-found.ts';
import { R166 } from './R-166-no-power-no-path.ts';

export const accessRules: readonly Rule[] = [
  R155,
  R156,
  R157,
  R158,
  R159,
  R160,
  R161,
  R162,
  R163,
  R164,
  R165,
  R166,
];

import type { RuleCase } from '../rule.ts';
import { R155Cases } from './R-155-a-bolted-leaf-gives-no-width.cases.ts';
import { R156Cases } from './R-156-automatic-door-at-public-entrances.cases.ts';
import { R157Cases } from './R-157-operators-on-accessible-routes.cases.ts';
import { R158Cases } from './R-158-force-to-work-the-hardware.cases.ts';
import { R159Cases } from './R-159-yearly-inspection.cases.ts';
import { R160Cases } from './R-160-fire-department-way-in.cases.ts';
import { R161Cases } from './R-161-federal-workplace-rules.cases.ts';
import { R162Cases } from './R-162-federal-health-care.cases.ts';
import { R163Cases } from './R-163-existing-openings.cases.ts';
import { R164Cases } from './R-164-two-motions-inside-units.cases.ts';
import { R165Cases } from './R-165-unlawful-lock-found.cases.ts';
import { R166Cases } from './R-166-no-power-no-path.cases.ts';

export const accessCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-155': R155Cases,
  'R-156': R156Cases,
  'R-157': R157Cases,
  'R-158': R158Cases,
  'R-159': R159Cases,
  'R-160': R160Cases,
  'R-161': R161Cases,
  'R-162': R162Cases,
  'R-163': R163Cases,
  'R-164': R164Cases,
  'R-165': R165Cases,
  'R-166': R166Cases,
};

import type { RuleCase } from '../rule.ts';
import { R81Cases } from './R-81-no-delay-in-high-hazard.cases.ts';
import { R82Cases } from './R-82-delay-in-assembly-only-at-courtrooms.cases.ts';
import { R83Cases } from './R-83-delay-in-schools-only-at-small-classrooms.cases.ts';
import { R84Cases } from './R-84-delay-needs-sprinklers-or-detection.cases.ts';
import { R85Cases } from './R-85-delayed-egress-in-full.cases.ts';
import { R86Cases } from './R-86-thirty-seconds-need-approval.cases.ts';
import { R87Cases } from './R-87-one-delayed-door-on-a-way-out.cases.ts';
import { R88Cases } from './R-88-two-delayed-doors-in-institutions.cases.ts';
import { R89Cases } from './R-89-controlled-egress-only-in-care.cases.ts';
import { R90Cases } from './R-90-controlled-egress-in-full.cases.ts';
import { R91Cases } from './R-91-memory-care-hangs-on-its-group.cases.ts';
import { R92Cases } from './R-92-newborn-pediatric-and-emergency-units.cases.ts';
import { R93Cases } from './R-93-one-controlled-door-before-an-exit.cases.ts';
import { R94Cases } from './R-94-elevator-lobby-keeps-a-way-out.cases.ts';
import { R95Cases } from './R-95-elevator-lobby-lock-in-full.cases.ts';
import { R96Cases } from './R-96-lobby-with-its-own-exit.cases.ts';
import { R170Cases } from './R-170-staff-release-without-the-controller.cases.ts';
import { N90Cases } from './N-90-delay-only-where-asked.cases.ts';
import { N91Cases } from './N-91-controlled-only-where-asked.cases.ts';
import { N92Cases } from './N-92-clinical-lock-only-with-a-need.cases.ts';
import { N93Cases } from './N-93-lobby-lock-only-at-an-elevator-lobby.cases.ts';
import { N94Cases } from './N-94-staff-release-only-in-detention.cases.ts';
import { N95Cases } from './N-95-a-wish-to-hold-that-is-not-met.cases.ts';

export const specialCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-81': R81Cases,
  'R-82': R82Cases,
  'R-83': R83Cases,
  'R-84': R84Cases,
  'R-85': R85Cases,
  'R-86': R86Cases,
  'R-87': R87Cases,
  'R-88': R88Cases,
  'R-89': R89Cases,
  'R-90': R90Cases,
  'R-91': R91Cases,
  'R-92': R92Cases,
  'R-93': R93Cases,
  'R-94': R94Cases,
  'R-95': R95Cases,
  'R-96': R96Cases,
  'R-170': R170Cases,
  'N-90': N90Cases,
  'N-91': N91Cases,
  'N-92': N92Cases,
  'N-93': N93Cases,
  'N-94': N94Cases,
  'N-95': N95Cases,
};

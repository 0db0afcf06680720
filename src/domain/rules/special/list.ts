import type { Rule } from '../rule.ts';
import { R81 } from './R-81-no-delay-in-high-hazard.ts';
import { R82 } from './R-82-delay-in-assembly-only-at-courtrooms.ts';
import { R83 } from './R-83-delay-in-schools-only-at-small-classrooms.ts';
import { R84 } from './R-84-delay-needs-sprinklers-or-detection.ts';
import { R85 } from './R-85-delayed-egress-in-full.ts';
import { R86 } from './R-86-thirty-seconds-need-approval.ts';
import { R87 } from './R-87-one-delayed-door-on-a-way-out.ts';
import { R88 } from './R-88-two-delayed-doors-in-institutions.ts';
import { R89 } from './R-89-controlled-egress-only-in-care.ts';
import { R90 } from './R-90-controlled-egress-in-full.ts';
import { R91 } from './R-91-memory-care-hangs-on-its-group.ts';
import { R92 } from './R-92-newborn-pediatric-and-emergency-units.ts';
import { R93 } from './R-93-one-controlled-door-before-an-exit.ts';
import { R94 } from './R-94-elevator-lobby-keeps-a-way-out.ts';
import { R95 } from './R-95-elevator-lobby-lock-in-full.ts';
import { R96 } from './R-96-lobby-with-its-own-exit.ts';
import { R170 } from './R-170-staff-release-without-the-controller.ts';
import { N90 } from './N-90-delay-only-where-asked.ts';
import { N91 } from './N-91-controlled-only-where-asked.ts';
import { N92 } from './N-92-clinical-lock-only-with-a-need.ts';
import { N93 } from './N-93-lobby-lock-only-at-an-elevator-lobby.ts';
import { N94 } from './N-94-staff-release-only-in-detention.ts';
import { N95 } from './N-95-a-wish-to-hold-that-is-not-met.ts';

export const specialRules: readonly Rule[] = [
  R81,
  R82,
  R83,
  R84,
  R85,
  R86,
  R87,
  R88,
  R89,
  R90,
  R91,
  R92,
  R93,
  R94,
  R95,
  R96,
  R170,
  N90,
  N91,
  N92,
  N93,
  N94,
  N95,
];

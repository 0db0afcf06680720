import type { RuleCase } from '../rule.ts';
import { R97Cases } from './R-97-suite-entrance.cases.ts';
import { R98Cases } from './R-98-server-room.cases.ts';
import { R99Cases } from './R-99-cash-and-pharmacy.cases.ts';
import { R100Cases } from './R-100-interlock-lets-people-out.cases.ts';
import { R101Cases } from './R-101-classroom-lockdown.cases.ts';
import { R102Cases } from './R-102-two-motions-in-old-classrooms.cases.ts';
import { R103Cases } from './R-103-detention-goes-to-a-reviewer.cases.ts';
import { R104Cases } from './R-104-dwelling-entrance.cases.ts';
import { R105Cases } from './R-105-large-assembly-main-entrance.cases.ts';
import { R106Cases } from './R-106-key-lock-on-a-small-assembly.cases.ts';
import { R107Cases } from './R-107-patient-corridor-door.cases.ts';
import { R108Cases } from './R-108-behavioral-health-exit.cases.ts';
import { R109Cases } from './R-109-refrigeration-machinery-room.cases.ts';
import { R110Cases } from './R-110-exterior-space-back-through-the-building.cases.ts';
import { R111Cases } from './R-111-storage-room-pair.cases.ts';
import { R112Cases } from './R-112-business-pair-with-manual-bolts.cases.ts';
import { R113Cases } from './R-113-no-manual-bolts-where-the-pair-counts.cases.ts';
import { R114Cases } from './R-114-safe-room-goes-to-a-reviewer.cases.ts';
import { R115Cases } from './R-115-power-doors-open-by-hand.cases.ts';

export const roomsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-97': R97Cases,
  'R-98': R98Cases,
  'R-99': R99Cases,
  'R-100': R100Cases,
  'R-101': R101Cases,
  'R-102': R102Cases,
  'R-103': R103Cases,
  'R-104': R104Cases,
  'R-105': R105Cases,
  'R-106': R106Cases,
  'R-107': R107Cases,
  'R-108': R108Cases,
  'R-109': R109Cases,
  'R-110': R110Cases,
  'R-111': R111Cases,
  'R-112': R112Cases,
  'R-113': R113Cases,
  'R-114': R114Cases,
  'R-115': R115Cases,
};

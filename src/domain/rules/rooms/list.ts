import type { Rule } from '../rule.ts';
import { R97 } from './R-97-suite-entrance.ts';
import { R98 } from './R-98-server-room.ts';
import { R99 } from './R-99-cash-and-pharmacy.ts';
import { R100 } from './R-100-interlock-lets-people-out.ts';
import { R101 } from './R-101-classroom-lockdown.ts';
import { R102 } from './R-102-two-motions-in-old-classrooms.ts';
import { R103 } from './R-103-detention-goes-to-a-reviewer.ts';
import { R104 } from './R-104-dwelling-entrance.ts';
import { R105 } from './R-105-large-assembly-main-entrance.ts';
import { R106 } from './R-106-key-lock-on-a-small-assembly.ts';
import { R107 } from './R-107-patient-corridor-door.ts';
import { R108 } from './R-108-behavioral-health-exit.ts';
import { R109 } from './R-109-refrigeration-machinery-room.ts';
import { R110 } from './R-110-exterior-space-back-through-the-building.ts';
import { R111 } from './R-111-storage-room-pair.ts';
import { R112 } from './R-112-business-pair-with-manual-bolts.ts';
import { R113 } from './R-113-no-manual-bolts-where-the-pair-counts.ts';
import { R114 } from './R-114-safe-room-goes-to-a-reviewer.ts';
import { R115 } from './R-115-power-doors-open-by-hand.ts';

export const roomsRules: readonly Rule[] = [
  R97,
  R98,
  R99,
  R100,
  R101,
  R102,
  R103,
  R104,
  R105,
  R106,
  R107,
  R108,
  R109,
  R110,
  R111,
  R112,
  R113,
  R114,
  R115,
];

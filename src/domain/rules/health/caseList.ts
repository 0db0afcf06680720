import type { RuleCase } from '../rule.ts';
import { R123Cases } from './R-123-clinical-lock.cases.ts';
import { R124Cases } from './R-124-no-sensor-where-panic-hardware-is-due.cases.ts';
import { R125Cases } from './R-125-delay-and-control-on-one-way.cases.ts';
import { R126Cases } from './R-126-sign-at-a-delayed-door.cases.ts';
import { R127Cases } from './R-127-a-way-out-through-this-room.cases.ts';
import { R128Cases } from './R-128-reentry-floor-that-traps.cases.ts';
import { R129Cases } from './R-129-selected-reentry.cases.ts';
import { R130Cases } from './R-130-health-care-suite.cases.ts';
import { R131Cases } from './R-131-smoke-barrier-across-a-corridor.cases.ts';
import { R132Cases } from './R-132-detention-building.cases.ts';
import { R133Cases } from './R-133-courtroom-doors.cases.ts';
import { R134Cases } from './R-134-day-care.cases.ts';
import { R167Cases } from './R-167-one-lock-on-a-leaf.cases.ts';
import { R168Cases } from './R-168-beds-need-their-width.cases.ts';

export const healthCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-123': R123Cases,
  'R-124': R124Cases,
  'R-125': R125Cases,
  'R-126': R126Cases,
  'R-127': R127Cases,
  'R-128': R128Cases,
  'R-129': R129Cases,
  'R-130': R130Cases,
  'R-131': R131Cases,
  'R-132': R132Cases,
  'R-133': R133Cases,
  'R-134': R134Cases,
  'R-167': R167Cases,
  'R-168': R168Cases,
};

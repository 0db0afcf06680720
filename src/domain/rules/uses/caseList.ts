import type { RuleCase } from '../rule.ts';
import { R146Cases } from './R-146-no-inside-lock-on-shared-toilets.cases.ts';
import { R147Cases } from './R-147-closets-open-from-inside.cases.ts';
import { R148Cases } from './R-148-balcony-of-one-unit-or-office-terrace.cases.ts';
import { R149Cases } from './R-149-storm-shelter-as-tested.cases.ts';
import { R150Cases } from './R-150-elevator-machine-room.cases.ts';
import { R151Cases } from './R-151-hazardous-rooms-close.cases.ts';
import { R152Cases } from './R-152-balanced-door-push-pad.cases.ts';
import { R153Cases } from './R-153-nfpa-classroom-lockdown.cases.ts';
import { R154Cases } from './R-154-nfpa-assembly-key-lock.cases.ts';
import { R169Cases } from './R-169-rooms-flooded-by-a-gas.cases.ts';

export const usesCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-146': R146Cases,
  'R-147': R147Cases,
  'R-148': R148Cases,
  'R-149': R149Cases,
  'R-150': R150Cases,
  'R-151': R151Cases,
  'R-152': R152Cases,
  'R-153': R153Cases,
  'R-154': R154Cases,
  'R-169': R169Cases,
};

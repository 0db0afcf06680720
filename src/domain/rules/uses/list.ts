import type { Rule } from '../rule.ts';
import { R146 } from './R-146-no-inside-lock-on-shared-toilets.ts';
import { R147 } from './R-147-closets-open-from-inside.ts';
import { R148 } from './R-148-balcony-of-one-unit-or-office-terrace.ts';
import { R149 } from './R-149-storm-shelter-as-tested.ts';
import { R150 } from './R-150-elevator-machine-room.ts';
import { R151 } from './R-151-hazardous-rooms-close.ts';
import { R152 } from './R-152-balanced-door-push-pad.ts';
import { R153 } from './R-153-nfpa-classroom-lockdown.ts';
import { R154 } from './R-154-nfpa-assembly-key-lock.ts';
import { R169 } from './R-169-rooms-flooded-by-a-gas.ts';

export const usesRules: readonly Rule[] = [R146, R147, R148, R149, R150, R151, R152, R153, R154, R169];

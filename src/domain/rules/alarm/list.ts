import type { Rule } from '../rule.ts';
import { R116 } from './R-116-locks-that-hold-release-on-alarm.ts';
import { R117 } from './R-117-free-exit-needs-no-alarm-unlock.ts';
import { R118 } from './R-118-stair-release-is-not-assumed.ts';
import { R119 } from './R-119-lock-fed-by-the-alarm-panel.ts';
import { R120 } from './R-120-release-stays-until-reset.ts';
import { R121 } from './R-121-special-locks-are-tested.ts';
import { R122 } from './R-122-unlock-before-the-operator-pushes.ts';

export const alarmRules: readonly Rule[] = [R116, R117, R118, R119, R120, R121, R122];

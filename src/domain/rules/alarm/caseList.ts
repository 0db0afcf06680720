import type { RuleCase } from '../rule.ts';
import { R116Cases } from './R-116-locks-that-hold-release-on-alarm.cases.ts';
import { R117Cases } from './R-117-free-exit-needs-no-alarm-unlock.cases.ts';
import { R118Cases } from './R-118-stair-release-is-not-assumed.cases.ts';
import { R119Cases } from './R-119-lock-fed-by-the-alarm-panel.cases.ts';
import { R120Cases } from './R-120-release-stays-until-reset.cases.ts';
import { R121Cases } from './R-121-special-locks-are-tested.cases.ts';
import { R122Cases } from './R-122-unlock-before-the-operator-pushes.cases.ts';

export const alarmCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-116': R116Cases,
  'R-117': R117Cases,
  'R-118': R118Cases,
  'R-119': R119Cases,
  'R-120': R120Cases,
  'R-121': R121Cases,
  'R-122': R122Cases,
};

import type { RuleCase } from '../rule.ts';
import { R135Cases } from './R-135-grilles-and-coiling-doors-in-egress.cases.ts';
import { R136Cases } from './R-136-waist-high-turnstile.cases.ts';
import { R137Cases } from './R-137-security-turnstile.cases.ts';
import { R138Cases } from './R-138-revolving-doors-and-high-turnstiles.cases.ts';
import { R139Cases } from './R-139-folding-and-accordion-doors.cases.ts';
import { R140Cases } from './R-140-manual-sliding-door-only-for-small-loads.cases.ts';
import { R141Cases } from './R-141-detention-sallyport-to-the-reviewer.cases.ts';
import { R142Cases } from './R-142-gates-are-doors.cases.ts';
import { R143Cases } from './R-143-doors-in-series.cases.ts';
import { R144Cases } from './R-144-egress-court-stays-open.cases.ts';
import { R145Cases } from './R-145-refuge-and-rescue-lobbies.cases.ts';

export const doorsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-135': R135Cases,
  'R-136': R136Cases,
  'R-137': R137Cases,
  'R-138': R138Cases,
  'R-139': R139Cases,
  'R-140': R140Cases,
  'R-141': R141Cases,
  'R-142': R142Cases,
  'R-143': R143Cases,
  'R-144': R144Cases,
  'R-145': R145Cases,
};

import type { Rule } from '../rule.ts';
import { R135 } from './R-135-grilles-and-coiling-doors-in-egress.ts';
import { R136 } from './R-136-waist-high-turnstile.ts';
import { R137 } from './R-137-security-turnstile.ts';
import { R138 } from './R-138-revolving-doors-and-high-turnstiles.ts';
import { R139 } from './R-139-folding-and-accordion-doors.ts';
import { R140 } from './R-140-manual-sliding-door-only-for-small-loads.ts';
import { R141 } from './R-141-detention-sallyport-to-the-reviewer.ts';
import { R142 } from './R-142-gates-are-doors.ts';
import { R143 } from './R-143-doors-in-series.ts';
import { R144 } from './R-144-egress-court-stays-open.ts';
import { R145 } from './R-145-refuge-and-rescue-lobbies.ts';

export const doorsRules: readonly Rule[] = [R135, R136, R137, R138, R139, R140, R141, R142, R143, R144, R145];

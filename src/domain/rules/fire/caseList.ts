import type { RuleCase } from '../rule.ts';
import { R31Cases } from './R-31-no-fail-safe-strike-on-a-rated-door.cases.ts';
import { R32Cases } from './R-32-fail-secure-strike-listed-for-fire.cases.ts';
import { R33Cases } from './R-33-no-unlatched-hours-without-relatching.cases.ts';
import { R34Cases } from './R-34-fire-exit-hardware.cases.ts';
import { R35Cases } from './R-35-latch-retraction-drops-on-fire.cases.ts';
import { R36Cases } from './R-36-a-fire-door-closes-itself.cases.ts';
import { R37Cases } from './R-37-a-deadbolt-is-no-fire-latch.cases.ts';
import { R38Cases } from './R-38-a-fire-door-has-a-positive-latch.cases.ts';
import { R39Cases } from './R-39-no-cutting-of-a-labeled-door.cases.ts';
import { R40Cases } from './R-40-round-holes-are-allowed.cases.ts';
import { R41Cases } from './R-41-grouted-frame.cases.ts';
import { R42Cases } from './R-42-wallboard-behind-the-strike-box.cases.ts';
import { R43Cases } from './R-43-operator-on-a-fire-door.cases.ts';
import { R44Cases } from './R-44-hold-open-lets-go.cases.ts';
import { R45Cases } from './R-45-no-manual-bolts-on-a-rated-pair.cases.ts';
import { R46Cases } from './R-46-inactive-leaf-latches-first.cases.ts';
import { R47Cases } from './R-47-auxiliary-fire-pin.cases.ts';
import { R48Cases } from './R-48-strike-in-the-inactive-leaf.cases.ts';
import { R49Cases } from './R-49-every-item-is-labeled.cases.ts';
import { R50Cases } from './R-50-double-egress-pair.cases.ts';
import { R51Cases } from './R-51-power-loss-leaves-it-latched.cases.ts';
import { R52Cases } from './R-52-smoke-seals-want-no-gap.cases.ts';
import { R53Cases } from './R-53-no-label-does-not-mean-no-rating.cases.ts';

export const fireCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-31': R31Cases,
  'R-32': R32Cases,
  'R-33': R33Cases,
  'R-34': R34Cases,
  'R-35': R35Cases,
  'R-36': R36Cases,
  'R-37': R37Cases,
  'R-38': R38Cases,
  'R-39': R39Cases,
  'R-40': R40Cases,
  'R-41': R41Cases,
  'R-42': R42Cases,
  'R-43': R43Cases,
  'R-44': R44Cases,
  'R-45': R45Cases,
  'R-46': R46Cases,
  'R-47': R47Cases,
  'R-48': R48Cases,
  'R-49': R49Cases,
  'R-50': R50Cases,
  'R-51': R51Cases,
  'R-52': R52Cases,
  'R-53': R53Cases,
};

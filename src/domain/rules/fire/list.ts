import type { Rule } from '../rule.ts';
import { R31 } from './R-31-no-fail-safe-strike-on-a-rated-door.ts';
import { R32 } from './R-32-fail-secure-strike-listed-for-fire.ts';
import { R33 } from './R-33-no-unlatched-hours-without-relatching.ts';
import { R34 } from './R-34-fire-exit-hardware.ts';
import { R35 } from './R-35-latch-retraction-drops-on-fire.ts';
import { R36 } from './R-36-a-fire-door-closes-itself.ts';
import { R37 } from './R-37-a-deadbolt-is-no-fire-latch.ts';
import { R38 } from './R-38-a-fire-door-has-a-positive-latch.ts';
import { R39 } from './R-39-no-cutting-of-a-labeled-door.ts';
import { R40 } from './R-40-round-holes-are-allowed.ts';
import { R41 } from './R-41-grouted-frame.ts';
import { R42 } from './R-42-wallboard-behind-the-strike-box.ts';
import { R43 } from './R-43-operator-on-a-fire-door.ts';
import { R44 } from './R-44-hold-open-lets-go.ts';
import { R45 } from './R-45-no-manual-bolts-on-a-rated-pair.ts';
import { R46 } from './R-46-inactive-leaf-latches-first.ts';
import { R47 } from './R-47-auxiliary-fire-pin.ts';
import { R48 } from './R-48-strike-in-the-inactive-leaf.ts';
import { R49 } from './R-49-every-item-is-labeled.ts';
import { R50 } from './R-50-double-egress-pair.ts';
import { R51 } from './R-51-power-loss-leaves-it-latched.ts';
import { R52 } from './R-52-smoke-seals-want-no-gap.ts';
import { R53 } from './R-53-no-label-does-not-mean-no-rating.ts';

export const fireRules: readonly Rule[] = [
  R31,
  R32,
  R33,
  R34,
  R35,
  R36,
  R37,
  R38,
  R39,
  R40,
  R41,
  R42,
  R43,
  R44,
  R45,
  R46,
  R47,
  R48,
  R49,
  R50,
  R51,
  R52,
  R53,
];

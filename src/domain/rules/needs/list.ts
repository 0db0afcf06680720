import type { Rule } from '../rule.ts';
import { N01 } from './N-01-a-credential-needs-an-electric-lock.ts';
import { N02 } from './N-02-hours-need-a-clock.ts';
import { N03 } from './N-03-no-electric-lock-without-a-use.ts';
import { N04 } from './N-04-key-inside-only-where-asked.ts';
import { N05 } from './N-05-bare-glass-stays-bare.ts';
import { N06 } from './N-06-secure-room-that-opens-with-the-mains.ts';
import { N07 } from './N-07-lockdown-needs-a-wire.ts';
import { N08 } from './N-08-no-lock-where-nothing-latches.ts';
import { N09 } from './N-09-locks-of-turnstiles-belong-to-the-maker.ts';
import { N10 } from './N-10-nothing-asked-nothing-bought.ts';
import { N11 } from './N-11-how-the-other-leaf-is-held.ts';
import { N12 } from './N-12-the-operator-locks-what-it-moves.ts';
import { N13 } from './N-13-nothing-bought-for-a-sealed-opening.ts';

export const needsRules: readonly Rule[] = [N01, N02, N03, N04, N05, N06, N07, N08, N09, N10, N11, N12, N13];

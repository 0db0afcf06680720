import type { RuleCase } from '../rule.ts';
import { N01Cases } from './N-01-a-credential-needs-an-electric-lock.cases.ts';
import { N02Cases } from './N-02-hours-need-a-clock.cases.ts';
import { N03Cases } from './N-03-no-electric-lock-without-a-use.cases.ts';
import { N04Cases } from './N-04-key-inside-only-where-asked.cases.ts';
import { N05Cases } from './N-05-bare-glass-stays-bare.cases.ts';
import { N06Cases } from './N-06-secure-room-that-opens-with-the-mains.cases.ts';
import { N07Cases } from './N-07-lockdown-needs-a-wire.cases.ts';
import { N08Cases } from './N-08-no-lock-where-nothing-latches.cases.ts';
import { N09Cases } from './N-09-locks-of-turnstiles-belong-to-the-maker.cases.ts';
import { N10Cases } from './N-10-nothing-asked-nothing-bought.cases.ts';
import { N11Cases } from './N-11-how-the-other-leaf-is-held.cases.ts';
import { N12Cases } from './N-12-the-operator-locks-what-it-moves.cases.ts';
import { N13Cases } from './N-13-nothing-bought-for-a-sealed-opening.cases.ts';

export const needsCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'N-01': N01Cases,
  'N-02': N02Cases,
  'N-03': N03Cases,
  'N-04': N04Cases,
  'N-05': N05Cases,
  'N-06': N06Cases,
  'N-07': N07Cases,
  'N-08': N08Cases,
  'N-09': N09Cases,
  'N-10': N10Cases,
  'N-11': N11Cases,
  'N-12': N12Cases,
  'N-13': N13Cases,
};

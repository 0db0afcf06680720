import type { Rule } from '../rule.ts';
import { R69 } from './R-69-assembly-and-schools.ts';
import { R70 } from './R-70-high-hazard-any-load.ts';
import { R71 } from './R-71-nfpa-101-loads.ts';
import { R72 } from './R-72-stricter-of-two-codes.ts';
import { R73 } from './R-73-no-second-lock-beside-panic-hardware.ts';
import { R74 } from './R-74-ways-to-electrify-panic-hardware.ts';
import { R75 } from './R-75-magnet-beside-required-panic-hardware.ts';
import { R76 } from './R-76-electrical-rooms.ts';
import { R77 } from './R-77-electrical-rooms-ibc-2018.ts';
import { R78 } from './R-78-panic-hardware-that-is-not-required.ts';
import { R79 } from './R-79-a-strike-frees-one-point.ts';
import { R80 } from './R-80-no-button-before-the-bar.ts';
import { R171 } from './R-171-a-double-acting-leaf-carries-no-bar.ts';

export const panicRules: readonly Rule[] = [R69, R70, R71, R72, R73, R74, R75, R76, R77, R78, R79, R80, R171];

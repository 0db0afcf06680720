import type { RuleCase } from '../rule.ts';
import { R69Cases } from './R-69-assembly-and-schools.cases.ts';
import { R70Cases } from './R-70-high-hazard-any-load.cases.ts';
import { R71Cases } from './R-71-nfpa-101-loads.cases.ts';
import { R72Cases } from './R-72-stricter-of-two-codes.cases.ts';
import { R73Cases } from './R-73-no-second-lock-beside-panic-hardware.cases.ts';
import { R74Cases } from './R-74-ways-to-electrify-panic-hardware.cases.ts';
import { R75Cases } from './R-75-magnet-beside-required-panic-hardware.cases.ts';
import { R76Cases } from './R-76-electrical-rooms.cases.ts';
import { R77Cases } from './R-77-electrical-rooms-ibc-2018.cases.ts';
import { R78Cases } from './R-78-panic-hardware-that-is-not-required.cases.ts';
import { R79Cases } from './R-79-a-strike-frees-one-point.cases.ts';
import { R80Cases } from './R-80-no-button-before-the-bar.cases.ts';
import { R171Cases } from './R-171-a-double-acting-leaf-carries-no-bar.cases.ts';

export const panicCases: Readonly<Record<string, readonly RuleCase[]>> = {
  'R-69': R69Cases,
  'R-70': R70Cases,
  'R-71': R71Cases,
  'R-72': R72Cases,
  'R-73': R73Cases,
  'R-74': R74Cases,
  'R-75': R75Cases,
  'R-76': R76Cases,
  'R-77': R77Cases,
  'R-78': R78Cases,
  'R-79': R79Cases,
  'R-80': R80Cases,
  'R-171': R171Cases,
};

import type { Rule } from '../rule.ts';
import { R16 } from './R-16-sensor-release-in-full.ts';

export const magnetsRules: readonly Rule[] = [R16];

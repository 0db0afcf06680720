import type { Rule } from '../rule.ts';
import { R31 } from './R-31-no-fail-safe-strike-on-a-rated-door.ts';

export const fireRules: readonly Rule[] = [R31];

import type { Rule } from '../rule.ts';

export const stairsRules: readonly Rule[] = [];

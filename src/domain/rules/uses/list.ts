import type { Rule } from '../rule.ts';

export const usesRules: readonly Rule[] = [];

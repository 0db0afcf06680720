import type { Rule } from '../rule.ts';

export const specialRules: readonly Rule[] = [];

import type { Rule } from '../rule.ts';

export const panicRules: readonly Rule[] = [];

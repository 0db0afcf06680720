import type { Rule } from '../rule.ts';

export const foundationsRules: readonly Rule[] = [];

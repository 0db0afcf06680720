import type { Rule } from '../rule.ts';

export const trapsRules: readonly Rule[] = [];

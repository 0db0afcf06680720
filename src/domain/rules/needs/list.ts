import type { Rule } from '../rule.ts';

export const needsRules: readonly Rule[] = [];

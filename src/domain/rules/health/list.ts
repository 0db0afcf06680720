import type { Rule } from '../rule.ts';

export const healthRules: readonly Rule[] = [];

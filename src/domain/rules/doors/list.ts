import type { Rule } from '../rule.ts';

export const doorsRules: readonly Rule[] = [];

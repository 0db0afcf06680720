import type { Rule } from '../rule.ts';

export const fitRules: readonly Rule[] = [];

import type { Rule } from '../rule.ts';

export const accessRules: readonly Rule[] = [];

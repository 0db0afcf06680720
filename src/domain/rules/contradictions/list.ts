import type { Rule } from '../rule.ts';

export const contradictionsRules: readonly Rule[] = [];

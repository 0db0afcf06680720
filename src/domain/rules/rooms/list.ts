import type { Rule } from '../rule.ts';

export const roomsRules: readonly Rule[] = [];

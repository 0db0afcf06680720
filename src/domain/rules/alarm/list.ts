import type { Rule } from '../rule.ts';

export const alarmRules: readonly Rule[] = [];

import type { Fact } from '../model/fact.ts';

export const known = <T>(value: T): Fact<T> => ({ is: 'known', value });
export const assumed = <T>(value: T, from: string): Fact<T> => ({ is: 'assumed', value, from });
export const unknown: Fact<never> = { is: 'unknown' };

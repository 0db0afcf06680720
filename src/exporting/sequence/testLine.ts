import type { ApprovalCondition } from '../../domain/review/conditionsAt.ts';
import type { Decision } from '../../domain/decide/decision.ts';
import type { Simulated } from '../../domain/decide/whatHappens.ts';

/** One line of the test: what to do, what must happen; result, value and initials are written in by hand. */
export interface TestLine {
  readonly number: number;
  readonly about: string;
  readonly act: string;
  readonly expect: string;
  /** Whose the figures are that stand in act and expect; empty where there is none. */
  readonly source: string;
  /** What is measured, where something is; the unit stands in the box. */
  readonly value: string;
}
export type Draft = Omit<TestLine, 'number'>;
export const line = (about: string, act: string, expect: string, source = '', value = ''): Draft => ({
  about,
  act,
  expect,
  source,
  value,
});

/** What a test is written from. */
export interface Tested {
  readonly simulated: Simulated;
  readonly decision: Decision;
  /** Conditions of the approval; each is a line of the test. */
  readonly conditions?: readonly ApprovalCondition[];
}

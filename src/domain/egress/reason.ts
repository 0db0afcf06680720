import type { Confidence } from '../rules/rule.ts';
import { confidenceInWords } from '../rules/rule.ts';

/** One line of a computing: what comes out, with its figures, and what it rests on. */
export interface Reason {
  readonly says: string;
  /** Section with edition and how it was read; empty where the survey itself says it. */
  readonly rests: string;
}

export function resting(says: string, source: string, confidence: Confidence): Reason {
  return { says, rests: `${source}; ${confidenceInWords(confidence)}` };
}
export function surveyed(says: string): Reason {
  return { says, rests: '' };
}

/** "1,120" or "33.25"; finer than a hundredth nobody measures. */
export function figure(value: number): string {
  return (Math.round(value * 100) / 100).toLocaleString('en-US');
}
export function peopleInWords(count: number): string {
  return count === 1 ? '1 person' : `${figure(count)} people`;
}

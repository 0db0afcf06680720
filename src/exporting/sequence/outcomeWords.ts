import { startSentence } from '../../domain/text/midSentence.ts';
import type { Outcome } from '../../domain/simulate/outcome.ts';

/** "Outside locked; leaving free; latched; no current; no alarm." — what a tester must find. */
export function expectedInWords(outcome: Outcome): string {
  const parts = [
    outcome.entry === 'none' ? '' : `outside ${outcome.entry}`,
    exitInWords(outcome),
    outcome.latched === 'none' ? '' : outcome.latched === 'yes' ? 'latched' : 'not latched',
    outcome.coil === 'none' ? '' : outcome.coil === 'yes' ? 'coil energised' : 'no current in the coil',
    outcome.alarm ? 'alarm raised' : 'no alarm',
  ].filter(Boolean);
  return `${startSentence(parts.join('; '))}.`;
}

function exitInWords({ exit, afterS }: Pick<Outcome, 'exit' | 'afterS'>): string {
  switch (exit) {
    case 'free':
      return 'leaving free';
    case 'after':
      return `leaving after ${afterS} s`;
    case 'byStaff':
      return 'leaving by staff only';
    case 'blocked':
      return 'leaving blocked';
    case 'none':
      return '';
  }
}

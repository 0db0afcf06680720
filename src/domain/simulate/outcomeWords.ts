import { midSentence, startSentence } from '../text/midSentence.ts';
import type { Arrangement } from '../arrangement/arrangement.ts';
import type { Outcome } from './outcome.ts';
import { notApplyingInWords } from './sentences.ts';

/** "Outside locked; leaving free; latched; coil not energized; no alarm." — what a tester must find. */
export function expectedInWords(outcome: Outcome): string {
  return `${joined([
    outcome.entry === 'none' ? '' : `outside ${outcome.entry}`,
    exitInWords(outcome),
    latchInWords(outcome),
    outcome.coil === 'none' ? '' : outcome.coil === 'yes' ? 'coil energized' : 'coil not energized',
    outcome.alarm ? 'alarm raised' : 'no alarm',
  ])}.`;
}

/** What the door does, without the rest of the row: "Outside unlocked; leaving free; latched". */
export function doorInWords(outcome: Outcome): string {
  return joined([
    outcome.entry === 'none' ? '' : `outside ${outcome.entry}`,
    exitInWords(outcome),
    latchInWords(outcome),
  ]);
}

/**
 * What the fire alarm does at an opening, from the condition table and nowhere else: door schedule, opening sheet,
 * CSV, sequence and one-line diagram print these words, so none of them can say what the table does not.
 */
export function onFireAlarm(
  arrangement: Arrangement,
  { fireAlarm }: { readonly fireAlarm: Outcome },
): string {
  if (!fireAlarm.applies) return notApplyingInWords(arrangement, 'fireAlarm') ?? '';
  const connection = isOnAlarm(arrangement) ? 'Breaks lock power' : 'Not connected';
  return `${connection}: ${midSentence(doorInWords(fireAlarm))}`;
}

/** A contact of the alarm stands in a lock circuit; a lock without one has nothing to break. */
export function isOnAlarm({ alarmCuts, failMode }: Arrangement): boolean {
  return alarmCuts && (failMode === 'safe' || failMode === 'secure');
}

export function exitInWords({ exit, afterS }: Pick<Outcome, 'exit' | 'afterS'>): string {
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

function latchInWords({ latched }: Pick<Outcome, 'latched'>): string {
  return latched === 'none' ? '' : latched === 'yes' ? 'latched' : 'not latched';
}

function joined(parts: readonly string[]): string {
  return startSentence(parts.filter((part) => part !== '').join('; '));
}

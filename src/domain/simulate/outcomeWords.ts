import { midSentence, startSentence } from '../text/midSentence.ts';
import type { Arrangement } from '../arrangement/arrangement.ts';
import type { DoorState, Outcome } from './outcome.ts';
import { notApplyingInWords } from './sentences.ts';
import { doorParts, inUnlockedHours } from './stateWords.ts';

/** "Outside locked; leaving free; latched; coil not energized; no alarm." — what a tester must find. */
export function expectedInWords(outcome: Outcome): string {
  const { hours, alarm } = outcome;
  const words = (state: DoorState) =>
    joined([
      ...doorParts(state),
      state.coil === 'none' ? '' : state.coil === 'yes' ? 'coil energized' : 'coil not energized',
      alarm ? 'alarm raised' : 'no alarm',
    ]);
  return hours
    ? `In locked hours: ${midSentence(words(hours.locked))}. In unlocked hours: ${midSentence(words(hours.unlocked))}.`
    : `${words(outcome)}.`;
}

/**
 * What the door does, without the rest of the row: "Outside unlocked; leaving free; latched". Where a fire finds it in two
 * states, both are told apart: no door is locked and unlatched at once because it is so at different hours.
 */
export function doorInWords({ hours, ...state }: Outcome): string {
  return hours
    ? `In locked hours ${doorParts(hours.locked).join(', ')}; ${inUnlockedHours(hours.unlocked)}`
    : joined(doorParts(state));
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

function joined(parts: readonly string[]): string {
  return startSentence(parts.filter((part) => part !== '').join('; '));
}

/** In place of the table of conditions, and of findings under it. */
export const nothingToRun = 'Nothing is chosen for this opening yet, so there is nothing to run.';
export const noProblemFound = 'Checked in every condition listed below. This check found no problem.';

import type { DoorState } from './outcome.ts';

/** "in unlocked hours outside unlocked, leaving free, not latched". */
export function inUnlockedHours(state: DoorState): string {
  return `in unlocked hours ${doorParts(state).join(', ')}`;
}

/** Outside, leaving, latch: what does not apply is left out. */
export function doorParts(state: DoorState): readonly string[] {
  return [
    state.entry === 'none' ? '' : `outside ${state.entry}`,
    exitInWords(state),
    latchInWords(state),
  ].filter((part) => part !== '');
}

export function exitInWords({ exit, afterS }: Pick<DoorState, 'exit' | 'afterS'>): string {
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

function latchInWords({ latched }: Pick<DoorState, 'latched'>): string {
  return latched === 'none' ? '' : latched === 'yes' ? 'latched' : 'not latched';
}

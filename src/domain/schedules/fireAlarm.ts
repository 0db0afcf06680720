import type { ItemId } from '../devices/items.ts';
import type { Choice } from '../decide/decision.ts';
import type { Part } from '../decide/parts.ts';

/** What the fire alarm does at an opening, short enough for a column; the first line that holds is said. */
const byItem: readonly (readonly [readonly ItemId[], string])[] = [
  [['stairReleaseTogether', 'stairAlarmRelease'], 'Stair side unlocks, latch stays'],
  [['fireAlarmRelease', 'detectionRelease'], 'Unlocks, held until reset'],
  [['fireAlarmRelatch', 'doorDetector'], 'Lock power drops, door latches'],
];

export function fireAlarmInWords(choice: Choice, parts: readonly Part[]): string {
  const present = new Set(parts.map((part) => part.item));
  for (const [items, words] of byItem) if (items.some((item) => present.has(item))) return words;
  const { device } = choice.candidate;
  if (!device.wired) return 'Not connected; leaving stays free';
  return device.freeEgress ? 'No change; leaving stays free' : 'No connection asked for';
}

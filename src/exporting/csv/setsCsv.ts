import type { HardwareSet } from '../../domain/schedules/sets.ts';
import { csvText } from './cells.ts';

export const setColumns = [
  'Set',
  'Arrangement',
  'Fail mode',
  'Release',
  'Fire label',
  'Leaves',
  'Handing',
  'Openings',
  'Line',
  'Item',
  'Standard',
  'Trade',
  'Each',
  'Total',
  'Asked for by',
  'Marks',
] as const;

/** Hardware sets as a file: one row per line of a set, the set repeated in each, so that rows can be sorted. */
export function setsCsv(sets: readonly HardwareSet[]): string {
  return csvText(
    setColumns,
    sets.flatMap((set) =>
      set.lines.map((line, index) => [
        set.id,
        set.device,
        set.failMode,
        set.release,
        set.label,
        set.leaves,
        set.handing,
        set.openings.length,
        index + 1,
        line.name,
        line.standard,
        line.trade,
        line.each,
        line.total,
        line.ruleIds.join(' '),
        set.openings.map((opening) => opening.mark).join('; '),
      ]),
    ),
  );
}

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
  'New or existing',
  'Openings',
  'Line',
  'Item',
  'Detail',
  'Standard',
  'Furnished and installed by',
  'Each',
  'Total',
  'Counted',
  'Asked for by',
  'Do not order yet',
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
        set.work,
        set.openings.length,
        index + 1,
        line.name,
        line.detail,
        line.standard,
        line.trade,
        // Empty, so that a sum over the column counts pieces only.
        line.included ? '' : line.each,
        line.included ? '' : line.total,
        line.included ? 'Included in another line' : 'By itself',
        line.ruleIds.join(' '),
        marksOf(set.openings.filter((opening) => !opening.settled)),
        marksOf(set.openings),
      ]),
    ),
  );
}

function marksOf(openings: HardwareSet['openings']): string {
  return openings.map((opening) => opening.mark).join('; ');
}

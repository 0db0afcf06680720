import { orderStateWords } from '../../domain/schedules/forOrder.ts';
import type { OpeningLine } from '../../domain/schedules/openingLines.ts';
import { numberStateWords } from '../../domain/schedules/setNumbers.ts';
import type { HardwareSet } from '../../domain/schedules/sets.ts';
import type { SiteWork } from '../../domain/schedules/siteWork.ts';
import type { SharedLine } from '../../domain/schedules/shared.ts';
import { countingWords } from '../../domain/decide/counting.ts';
import { csvText } from './cells.ts';

export const setColumns = [
  'Set',
  'Set number',
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
  'Each (pieces per opening)',
  'Total (pieces)',
  'Counted',
  'Asked for by',
  'Do not order yet',
  'Marks',
] as const;

/**
 * Hardware sets as a file: one row per line of a set, the set repeated in each, so that rows can be sorted; at the
 * end what several sets share, each thing once.
 */
export function setsCsv(sets: readonly HardwareSet[], shared: readonly SharedLine[]): string {
  return csvText(setColumns, [
    ...sets.flatMap((set) => [
      ...set.lines.map((line, index) => [
        set.id,
        numberStateWords[set.numberState],
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
        line.counting === 'bought' ? line.each : '',
        line.counting === 'bought' ? line.total : '',
        countingWords[line.counting],
        line.ruleIds.join(' '),
        marksOf(set.openings.filter((opening) => opening.order !== 'complete')),
        marksOf(set.openings),
      ]),
      ...set.siteWork.map((job, index) => workRow(set, job, set.lines.length + index + 1)),
    ]),
    ...shared.map((line, index) => sharedRow(line, index + 1)),
  ]);
}

type Cells = Partial<Record<(typeof setColumns)[number], string | number>>;
const inColumns = (cells: Cells) => setColumns.map((column) => cells[column] ?? '');

function workRow(set: HardwareSet, job: SiteWork, number: number): readonly (string | number)[] {
  return inColumns({
    Set: set.id,
    'Set number': numberStateWords[set.numberState],
    Arrangement: set.device,
    'Fail mode': set.failMode,
    Release: set.release,
    'Fire label': set.label,
    Leaves: set.leaves,
    Handing: set.handing,
    'New or existing': set.work,
    Openings: job.marks.length,
    Line: number,
    Item: job.says,
    'Furnished and installed by': job.trade,
    Counted: 'Site work, one job at each opening',
    'Asked for by': job.ruleId,
    'Do not order yet': marksOf(
      set.openings.filter((opening) => opening.order !== 'complete' && job.marks.includes(opening.mark)),
    ),
    Marks: job.marks.join('; '),
  });
}

function sharedRow(line: SharedLine, number: number): readonly (string | number)[] {
  return inColumns({
    Set: 'Shared',
    Openings: line.marks.length,
    Line: number,
    Item: line.name,
    Detail: line.detail,
    Standard: line.standard,
    'Furnished and installed by': line.trade,
    Counted: 'Once for all its openings',
    Marks: line.marks.join('; '),
  });
}

function marksOf(openings: HardwareSet['openings']): string {
  return openings.map((opening) => opening.mark).join('; ');
}

export const openingLineColumns = [
  'Mark',
  'Set',
  'Line',
  'Item',
  'Detail',
  'Standard',
  'Furnished and installed by',
  'Quantity (pieces)',
  'Counted',
  'Asked for by',
  'Order',
] as const;

/** The same lines opening by opening, before they are multiplied: what one door costs. */
export function openingLinesCsv(lines: readonly OpeningLine[]): string {
  const numbers = new Map<string, number>();
  return csvText(
    openingLineColumns,
    lines.map((line) => {
      const number = (numbers.get(line.openingId) ?? 0) + 1;
      numbers.set(line.openingId, number);
      return [
        line.mark,
        line.set,
        number,
        line.name,
        line.detail,
        line.standard,
        line.trade,
        line.counting === 'bought' ? line.quantity : '',
        countingWords[line.counting],
        line.ruleIds.join(' '),
        orderStateWords[line.order],
      ];
    }),
  );
}

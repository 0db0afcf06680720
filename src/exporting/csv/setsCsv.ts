import { orderStateWords } from '../../domain/sets/forOrder.ts';
import type { OpeningLine } from '../../domain/sets/openingLines.ts';
import { numberStateWords } from '../../domain/sets/setNumbers.ts';
import { type ItemTerms, sectionInWords } from '../../domain/hardware/itemTerms.ts';
import { blocks, type HardwareSet, type SetLine } from '../../domain/sets/sets.ts';
import type { SetCondition } from '../../domain/sets/setConditions.ts';
import type { SiteWork } from '../../domain/sets/siteWork.ts';
import type { SharedLine } from '../../domain/sets/shared.ts';
import { countingWords } from '../../domain/hardware/counting.ts';
import { csvText } from './cells.ts';

export const setColumns = [
  'Set',
  'Revision',
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
  'Block',
  'Item',
  'Description',
  'Standard',
  'Finish',
  'Key set',
  'Supplied by',
  'Installed by',
  'Wired by',
  'Section',
  'Each (per opening)',
  'New (quantity)',
  'Kept (quantity)',
  'Counted',
  'Asked for by',
  'Do not order yet',
  'Marks',
] as const;

/**
 * Hardware sets as a table: one row per line of a set, the set repeated in each, so that rows can be sorted; at the
 * end what several sets share, each thing once.
 */
export function setRows(
  sets: readonly HardwareSet[],
  shared: readonly SharedLine[],
): readonly (readonly (string | number)[])[] {
  return [
    ...sets.flatMap((set) => [
      ...set.lines.map((line, index) => lineRow(set, line, index + 1)),
      ...set.siteWork.map((job, index) => workRow(set, job, set.lines.length + index + 1)),
      ...set.conditions.map((one, index) =>
        conditionRow(set, one, set.lines.length + set.siteWork.length + index + 1),
      ),
    ]),
    ...shared.map((line, index) => sharedRow(line, index + 1)),
  ];
}

export function setsCsv(sets: readonly HardwareSet[], shared: readonly SharedLine[]): string {
  return csvText(setColumns, setRows(sets, shared));
}

function ofSet(set: HardwareSet): Cells {
  return {
    Set: set.id,
    Revision: set.revision,
    'Set number': numberStateWords[set.numberState],
    Arrangement: set.device,
    'Fail mode': set.failMode,
    Release: set.release,
    'Fire label': set.label,
    Leaves: set.leaves,
    Handing: set.handing,
    'New or existing': set.work,
  };
}

function lineRow(set: HardwareSet, line: SetLine, number: number): readonly (string | number)[] {
  const here =
    line.marks.length === 0 ? set.openings : set.openings.filter(({ mark }) => line.marks.includes(mark));
  const bought = line.counting === 'bought';
  return inColumns({
    ...ofSet(set),
    ...termCells(line.terms),
    Openings: here.length,
    Line: number,
    Block: blocks[line.block],
    Item: line.name,
    Description: line.detail,
    Standard: line.standard,
    // Empty where nothing is bought, so that a sum over the column counts what is.
    'Each (per opening)': bought ? (line.each ?? 'differs') : '',
    'New (quantity)': bought ? line.total : '',
    'Kept (quantity)': line.kept > 0 ? line.kept : '',
    Counted: countingWords[line.counting],
    'Asked for by': line.ruleIds.join(' '),
    'Do not order yet': marksOf(here.filter((opening) => opening.order !== 'complete')),
    Marks: marksOf(here),
  });
}

function termCells(terms: ItemTerms): Cells {
  return {
    Finish: terms.finish,
    'Key set': terms.keySet,
    'Supplied by': terms.suppliedBy,
    'Installed by': terms.installedBy,
    'Wired by': terms.wiredBy,
    Section: sectionInWords(terms.section),
  };
}

type Cells = Partial<Record<(typeof setColumns)[number], string | number>>;
const inColumns = (cells: Cells) => setColumns.map((column) => cells[column] ?? '');

function workRow(set: HardwareSet, job: SiteWork, number: number): readonly (string | number)[] {
  const here = set.openings.filter((opening) => job.marks.includes(opening.mark));
  return inColumns({
    ...ofSet(set),
    Openings: job.marks.length,
    Line: number,
    Block: blocks.work,
    Item: job.says,
    'Installed by': job.trade,
    Counted: 'Site work, one job at each opening',
    'Asked for by': job.ruleId,
    'Do not order yet': marksOf(here.filter((opening) => opening.order !== 'complete')),
    Marks: job.marks.join('; '),
  });
}

function conditionRow(set: HardwareSet, one: SetCondition, number: number): readonly (string | number)[] {
  const here = set.openings.filter((opening) => one.marks.includes(opening.mark));
  return inColumns({
    ...ofSet(set),
    Openings: one.marks.length,
    Line: number,
    Block: blocks.condition,
    Item: one.says,
    Counted: 'Condition of approval, kept at each opening',
    'Asked for by': one.from,
    'Do not order yet': marksOf(here.filter((opening) => opening.order !== 'complete')),
    Marks: one.marks.join('; '),
  });
}

function sharedRow(line: SharedLine, number: number): readonly (string | number)[] {
  return inColumns({
    Set: 'Shared',
    Openings: line.marks.length,
    Line: number,
    Block: blocks.goods,
    Item: line.name,
    Description: line.detail,
    Standard: line.standard,
    'Supplied by': line.trade,
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
  'Block',
  'Item',
  'Description',
  'Standard',
  'Supplied by',
  'New (quantity)',
  'Kept (quantity)',
  'Counted',
  'Asked for by',
  'Order',
] as const;

/** The same lines opening by opening, before they are multiplied: what one door costs. */
export function openingLineRows(lines: readonly OpeningLine[]): readonly (readonly (string | number)[])[] {
  const numbers = new Map<string, number>();
  return lines.map((line) => {
    const number = (numbers.get(line.openingId) ?? 0) + 1;
    numbers.set(line.openingId, number);
    return [
      line.mark,
      line.set,
      number,
      blocks[line.block],
      line.name,
      line.detail,
      line.standard,
      line.trade,
      line.counting === 'bought' ? line.quantity : '',
      line.counting === 'kept' ? line.quantity : '',
      countingWords[line.counting],
      line.ruleIds.join(' '),
      orderStateWords[line.order],
    ];
  });
}

export function openingLinesCsv(lines: readonly OpeningLine[]): string {
  return csvText(openingLineColumns, openingLineRows(lines));
}

import { isFactKey } from '../model/fields.ts';
import type { Edit } from '../commands/command.ts';
import { factAt, type AnyFact } from '../model/fact.ts';
import type { Opening } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { copyText, type GridColumn, type GridRow, type Ground, notKnown } from './columns.ts';
import { cellReader } from './readCells.ts';

/** What is to stand in one cell. */
export interface Target {
  readonly row: GridRow;
  readonly column: GridColumn;
  readonly text: string;
}

export interface PlannedCell {
  readonly openingId: string;
  readonly mark: string;
  readonly column: string;
  readonly head: string;
  readonly text: string;
  readonly before: string;
  /** As the cell will read; what it reads now where it stays. */
  readonly after: string;
  readonly is: 'changes' | 'same' | 'empty' | 'refused';
  /** Why it is refused; empty otherwise. */
  readonly says: string;
}

export interface Plan {
  readonly cells: readonly PlannedCell[];
  readonly edits: readonly Edit[];
  /** What lies outside the grid, each in a sentence. */
  readonly outside: readonly string[];
}

/** Whether empty cells leave what stands there, as a file does, or clear it. */
export type Empties = 'leave' | 'clear';

/**
 * What texts would make of cells, each by itself: those that can be read become edits, those that cannot stay as they
 * are and say why. Nothing is changed; the edits are one step.
 */
export function planTexts(
  targets: readonly Target[],
  ground: Ground,
  newId: () => string,
  empties: Empties = 'leave',
): Plan {
  const read = cellReader(ground.project, newId);
  const edits: Edit[] = [];
  // A space is looked for on the floor of its opening, so floors are read before anything else.
  const isFloor = ({ column }: Target) => Number(column.field !== 'floorId');
  const planned = new Map<Target, PlannedCell>();
  for (const target of targets.toSorted((a, b) => isFloor(a) - isFloor(b))) {
    const { row, column, text } = target;
    const before = column.text(row, ground);
    const cell = {
      openingId: row.opening.id,
      mark: row.opening.mark,
      column: column.key,
      head: column.head,
      text,
      before,
    };
    const stays = (is: 'same' | 'empty' | 'refused', says = '') =>
      planned.set(target, { ...cell, after: before, is, says });
    if (text.trim() === '' && empties === 'leave') stays('empty');
    else if (text.trim() === copyText(column, row, ground).trim()) stays('same');
    else {
      const answer = read(column, row.opening, text);
      if (!answer.ok) stays('refused', answer.says);
      else if (answer.edits.every((edit) => isThere(edit, row.opening))) stays('same');
      else {
        edits.push(...answer.edits);
        planned.set(target, { ...cell, after: answer.after, is: 'changes', says: '' });
      }
    }
  }
  const cells = targets.flatMap((target) => planned.get(target) ?? []);
  return { cells, edits, outside: [] };
}

/** Whether the opening is already as the edit would leave it. */
function isThere(edit: Edit, opening: Opening): boolean {
  if (edit.kind === 'setOpening') return opening[edit.field] === edit.value;
  if (edit.kind !== 'setFact') return false;
  const before = isFactKey(edit.fact) ? factAt(opening.facts, edit.fact) : undefined;
  const after = edit.value;
  if (before === undefined || after === null) return before === undefined && after === null;
  if (before.is !== after.is) return false;
  if (before.is === 'unknown' || after.is === 'unknown') return true;
  const from = (fact: AnyFact) => (fact.is === 'assumed' ? fact.from : '');
  return before.value === after.value && from(before) === from(after);
}

const stepWords = {
  paste: 'Paste',
  replace: 'Replace',
  fill: 'Fill down',
  clear: 'Clear',
  set: 'Set for all',
} as const;
export type CellStep = keyof typeof stepWords;

/** How the step is called where it can be undone. */
export const stepLabel = (step: CellStep, plan: Plan): string =>
  `${stepWords[step]}: ${counted(changesIn(plan), 'cell')}`;

/** The same for one cell that is edited. */
export const stepLabelOf = ({ head }: GridColumn, { mark }: Opening): string => `${mark}: ${head}`;

export const stepHead = (step: CellStep): string => `${stepWords[step]}: look before it is applied`;

const among = (cells: readonly PlannedCell[], is: PlannedCell['is']) =>
  cells.filter((cell) => cell.is === is).length;

export const changesIn = ({ cells }: Pick<Plan, 'cells'>): number => among(cells, 'changes');
export const refusedIn = ({ cells }: Pick<Plan, 'cells'>): readonly PlannedCell[] =>
  cells.filter(({ is }) => is === 'refused');

/** Every cell that is refused and everything outside is named; nothing is left out without a word. */
export const needsALook = (plan: Plan): boolean => plan.outside.length > 0 || refusedIn(plan).length > 0;

export function planInWords(plan: Plan): string {
  const { cells } = plan;
  const [changes, refusals, same, empty] = (['changes', 'refused', 'same', 'empty'] as const).map((is) =>
    among(cells, is),
  ) as [number, number, number, number];
  const parts = [
    `${counted(changes, 'cell changes', 'cells change')}.`,
    refusals > 0
      ? `${counted(refusals, 'cell is refused and stays as it is', 'cells are refused and stay as they are')}.`
      : '',
    same > 0 ? `${counted(same, 'cell already reads', 'cells already read')} that.` : '',
    empty > 0 ? `${counted(empty, 'cell is empty and changes', 'cells are empty and change')} nothing.` : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}

const longest = 60;
export const shortened = (text: string): string => {
  const line = text.replaceAll(/\s+/g, ' ').trim();
  return line.length > longest ? `${line.slice(0, longest)}…` : line;
};

/** What a cell reads before or after, for somebody who compares the two. */
export const readsInWords = (text: string): string =>
  text === '' ? 'empty' : text === notKnown ? 'not surveyed' : shortened(text);

const troubleFirst = ['refused', 'changes', 'same', 'empty'] as const;

/** What becomes of a cell, in words. */
function outcomeInWords({ is, says, after }: PlannedCell): string {
  switch (is) {
    case 'refused':
      return `Refused: ${says}`;
    case 'changes':
      return `Changes to ${readsInWords(after)}`;
    case 'same':
      return 'Already reads that';
    case 'empty':
      return 'Stays: the text is empty';
  }
}

/** Cells for somebody who looks before it is applied: first those that are refused, last those that stay. */
export function inOrderOfTrouble({ cells }: Plan): readonly (PlannedCell & { readonly outcome: string })[] {
  return troubleFirst.flatMap((is) =>
    cells.filter((cell) => cell.is === is).map((cell) => ({ ...cell, outcome: outcomeInWords(cell) })),
  );
}

import { dotOf, type History, historyOf, others, type Sibling, startDots, whole } from '../model/history.ts';
import { changedParts, isPlain } from '../model/parts.ts';
import type { Project } from '../model/project.ts';
import { type Applied, applyEdits, type Command, type Edit } from './command.ts';

/**
 * Applies a command and counts it: each part that it changed is marked with the edit. A command that brings a
 * history of its own (a merge, or taking one back) is not counted; the history it brings says all. Whoever gives it
 * must go on under a new device name, because edits counted since then may be in copies already.
 */
export function applyCommand(project: Project, command: Command, takingBack = false): Applied {
  const applied = applyEdits(project, command.edits, takingBack);
  if (!applied.ok || command.device === undefined || bringsHistory(command.edits)) return applied;
  const before = historyOf(project);
  const settled = command.edits.flatMap((edit) => (edit.kind === 'settle' ? [edit.part] : []));
  const touched = [...changedParts(project, applied.project), ...settled];
  if (touched.length === 0) return applied;
  const history = counted(before, command, touched);
  const inverse: readonly Edit[] =
    history.kept === before.kept
      ? applied.inverse
      : [...applied.inverse, { kind: 'takeParts', parts: [], history: project.history ?? null }];
  return { ok: true, project: { ...applied.project, history }, inverse };
}

export const bringsHistory = (edits: readonly Edit[]) => edits.some((edit) => edit.kind === 'takeParts');

interface Touched {
  readonly record: string;
  readonly field: string;
  readonly after?: unknown;
  readonly value?: unknown;
}

function counted(before: History, command: Command, touched: readonly Touched[]): History {
  const device = command.device as string;
  const count = (Object.hasOwn(before.seen, device) ? (before.seen[device] ?? 0) : 0) + 1;
  const dot = dotOf(device, count);
  const dots: Record<string, Readonly<Record<string, string>>> = { ...before.dots };
  const kept = new Kept(before.kept);
  let unsaid = false;
  for (const part of touched) {
    const { record, field } = part;
    const said = part.after ?? part.value;
    // A fact says itself when and by whom it was entered.
    unsaid ||= !(isPlain(said) && typeof said['at'] === 'string');
    const old = Object.hasOwn(dots, record) ? dots[record] : undefined;
    if (field !== whole) {
      dots[record] = { ...old, [field]: dot };
      kept.drop(record, field);
    } else if ('after' in part) {
      // Came or went: nothing that was written inside before counts any more.
      dots[record] = { [whole]: dot };
      kept.drop(record);
    } else {
      // Somebody decided that it stays; its fields are as old as they were.
      const inside = old?.[others] ?? old?.[whole] ?? startDots(before).join(' ');
      dots[record] = { ...old, [whole]: dot, [others]: inside };
      kept.drop(record, whole);
    }
  }
  const edits = unsaid ? { ...before.edits, [dot]: { at: command.at, by: command.by } } : before.edits;
  const { kept: _kept, edits: _edits, ...rest } = before;
  return {
    ...rest,
    seen: { ...before.seen, [device]: count },
    dots,
    ...(edits ? { edits } : {}),
    ...(kept.table ? { kept: kept.table } : {}),
  };
}

/** Values side by side, less those that are decided now. */
class Kept {
  table: History['kept'];
  constructor(table: History['kept']) {
    this.table = table;
  }
  drop(record: string, field?: string): void {
    const old = this.table && Object.hasOwn(this.table, record) ? this.table[record] : undefined;
    if (!this.table || !old || (field !== undefined && !Object.hasOwn(old, field))) return;
    const { [record]: _record, ...rest } = this.table;
    const fields: Record<string, readonly Sibling[]> = { ...old };
    if (field === undefined) this.table = rest;
    else {
      delete fields[field];
      this.table = Object.keys(fields).length > 0 ? { ...rest, [record]: fields } : rest;
    }
    if (Object.keys(this.table).length === 0) this.table = undefined;
  }
}

import type { Project } from '../model/project.ts';
import { type Applied, type CommandProblem, type Edit, editSchema } from './edits.ts';
import { handle, refused } from './handlers.ts';
import { Own } from './own.ts';

export {
  type Applied,
  type Command,
  type CommandProblem,
  type Edit,
} from './edits.ts';

/** One sentence for a person, to stand beside the field. */
export function commandProblemInWords(problem: CommandProblem): string {
  switch (problem.kind) {
    case 'noSuchOpening':
      return 'That opening is no longer in the project; it may have been removed elsewhere.';
    case 'noSuchFact':
      return `This version knows no fact called ${problem.fact}.`;
    case 'badValue':
      return problem.says;
    case 'markTaken':
      return `Mark ${problem.mark} is already used; every opening needs a mark of its own.`;
    case 'setNumberTaken':
      return `${problem.number} is already the number of another set, in use or retired.`;
    case 'verdictTaken':
      return `The log holds an entry ${problem.id} already, and an entry is never replaced. Withdraw it with a reason and write a new one.`;
  }
}

/**
 * Applies edits in order; all or nothing. The inverse undoes them when applied in the order given. Taking back
 * asks only for the right shape: an imported project may hold what a new edit may not bring in (two openings of
 * one mark), and undo must be able to return to it.
 */
export function applyEdits(project: Project, list: readonly Edit[], takingBack = false): Applied {
  let current = project;
  const inverse: Edit[] = [];
  const own = new Own();
  for (const edit of list) {
    const step = applyEdit(current, edit, takingBack, own);
    if (!step.ok) return step;
    current = step.project;
    inverse.push(...step.inverse.toReversed());
  }
  return { ok: true, project: current, inverse: inverse.toReversed() };
}

/** The words of the field first, then the whole shape: a half-made opening must not get into the document. */
function applyEdit(project: Project, edit: Edit, takingBack: boolean, own: Own): Applied {
  const applied = handle(project, edit, { takingBack, own });
  if (!applied.ok) return applied;
  const parsed = editSchema.safeParse(edit);
  if (parsed.success) return applied;
  const issue = parsed.error.issues[0];
  const field = issue?.path.join('.') ?? edit.kind;
  return refused({ kind: 'badValue', field, says: `${field}: ${issue?.message ?? 'this does not fit.'}` });
}

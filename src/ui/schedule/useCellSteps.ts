import { useState } from 'react';
import type { Ground } from '../../domain/grid/columns.ts';
import { cleared, fillDown, planReplace, type Replacing, setForAll } from '../../domain/grid/fill.ts';
import { copied, type Part, type Pasted, planPaste } from '../../domain/grid/paste.ts';
import { type CellStep, type Empties, needsALook, type Plan, stepLabel } from '../../domain/grid/plan.ts';
import type { Box } from '../../domain/grid/select.ts';
import { htmlTable, tsvText } from '../../exporting/csv/cells.ts';
import { useApplication } from '../context.ts';

/** Texts that wait to be applied, and where. */
export interface Waiting {
  readonly step: CellStep;
  readonly plan: Plan;
  readonly empties: Empties | null;
  /** The same again, with the empty cells taken the other way. */
  readonly again: (empties: Empties) => void;
}

/** What is done to many cells at once: each is one step, and what would leave a cell out is shown first. */
export function useCellSteps(ground: Ground) {
  const { store, newId } = useApplication();
  const [waiting, setWaiting] = useState<Waiting | null>(null);
  const apply = (step: CellStep, plan: Plan) => {
    setWaiting(null);
    if (plan.edits.length === 0) return;
    const done = store.getState().dispatch(stepLabel(step, plan), plan.edits);
    if (!done.ok) store.getState().tell({ kind: 'problem', says: done.says });
  };
  const doNow = (step: CellStep, plan: Plan) => {
    if (needsALook(plan)) setWaiting({ step, plan, empties: null, again: () => undefined });
    else apply(step, plan);
  };
  const paste = (texts: Pasted, shown: Part, box: Box, empties: Empties = 'leave') => {
    const plan = planPaste(texts, shown, box, ground, newId, empties);
    setWaiting({ step: 'paste', plan, empties, again: (next) => paste(texts, shown, box, next) });
  };
  return {
    waiting,
    apply: () => waiting && apply(waiting.step, waiting.plan),
    cancel: () => setWaiting(null),
    paste,
    replace: (what: Replacing, part: Part) => {
      const plan = planReplace(what, part, ground, newId);
      setWaiting({ step: 'replace', plan, empties: null, again: () => undefined });
    },
    fillDown: (part: Part) => doNow('fill', fillDown(part, ground)),
    clear: (part: Part) => doNow('clear', cleared(part, ground, newId)),
    setForAll: (text: string, part: Part) => doNow('set', setForAll(text, part, ground, newId)),
    /** The texts of a range in both spellings a clipboard knows. */
    copy: (part: Part) => {
      const cells = copied(part, ground);
      return { text: tsvText(cells), html: htmlTable(cells) };
    },
  };
}
export type CellSteps = ReturnType<typeof useCellSteps>;

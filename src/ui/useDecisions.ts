import { useEffect, useMemo, useSyncExternalStore } from 'react';
import { createBuildingCheck, type ShownDecisions } from '../app/buildingCheck.ts';
import type { Decision } from '../domain/decide/decision.ts';
import { type ShownState, shownState } from '../domain/words/states.ts';
import { useApp } from './context.ts';

/** One for the window: what it rests on is remembered once as well (app/buildings.ts). */
const buildingCheck = createBuildingCheck();

/** What is decided at every opening, as the building leaves it: the one place where a screen learns that. */
export function useDecisions(): ShownDecisions {
  const project = useApp((state) => state.document.project);
  const shown = useSyncExternalStore(buildingCheck.subscribe, () => buildingCheck.shown(project));
  useEffect(() => {
    if (shown.checking) buildingCheck.walk(project);
  }, [project, shown]);
  return shown;
}

export interface ShownDecision {
  readonly decision: Decision;
  readonly state: ShownState;
}

/** The same for one opening of the project. */
export function useDecision(openingId: string): ShownDecision {
  const { decisions, checking } = useDecisions();
  const decision = decisions.get(openingId);
  // Both come from the project that is shown, so an opening on screen is among them.
  if (!decision) throw new Error('An opening that is not in the project has no decision.');
  return useMemo(() => ({ decision, state: shownState(decision, checking) }), [decision, checking]);
}

import type { Decision } from '../domain/decide/decision.ts';
import type { Project } from '../domain/model/project.ts';
import { decisionsInBuilding, decisionsUntilWalked, isWalked } from './buildings.ts';

/** What a screen may say of the openings at this moment. */
export interface ShownDecisions {
  readonly decisions: ReadonlyMap<string, Decision>;
  /** The building is not walked yet with the last edit: nothing may be called settled. */
  readonly checking: boolean;
}

/**
 * Screens read every decision here. An edit paints at once: the opening as decided now, under what was last found of the
 * building. The building is walked when there is time, and then its findings stand.
 */
export interface BuildingCheck {
  readonly shown: (project: Project) => ShownDecisions;
  /** Has the building walked soon, if it is not. */
  readonly walk: (project: Project) => void;
  readonly subscribe: (changed: () => void) => () => void;
}

/** So few openings are walked within the frame of an edit. */
const atOnceUpTo = 40;
/** Whoever types on must not run into a walk: it waits for a pause, the longer the longer walks take. */
const longestPauseMs = 400;

export interface CheckNeeds {
  readonly atOnceUpTo?: number;
  /** Runs the work after so many milliseconds, once the page is idle. */
  readonly later?: (work: () => void, ms: number) => () => void;
}

export function createBuildingCheck(needs: CheckNeeds = {}): BuildingCheck {
  const most = needs.atOnceUpTo ?? atOnceUpTo;
  const later = needs.later ?? whenIdle;
  const listeners = new Set<() => void>();
  let last: { readonly project: Project; readonly shown: ShownDecisions } | undefined;
  let waiting: { readonly project: Project; readonly stop: () => void } | undefined;
  let lastWalkMs = 0;

  const shownNow = (project: Project): ShownDecisions =>
    isWalked(project) || Object.keys(project.openings).length <= most
      ? { decisions: decisionsInBuilding(project), checking: false }
      : { decisions: decisionsUntilWalked(project), checking: true };

  const walkNow = (project: Project) => {
    waiting = undefined;
    const started = performance.now();
    decisionsInBuilding(project);
    lastWalkMs = performance.now() - started;
    for (const changed of listeners) changed();
  };

  return {
    shown: (project) => {
      if (last?.project !== project || (last.shown.checking && isWalked(project))) {
        last = { project, shown: shownNow(project) };
      }
      return last.shown;
    },
    walk: (project) => {
      if (waiting?.project === project || isWalked(project)) return;
      waiting?.stop();
      waiting = {
        project,
        stop: later(() => walkNow(project), Math.min(longestPauseMs, 2 * lastWalkMs)),
      };
    },
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
}

/** Safari has no idle callbacks. */
function whenIdle(work: () => void, ms: number): () => void {
  let idle: number | undefined;
  const timer = setTimeout(() => {
    if (typeof requestIdleCallback === 'function') idle = requestIdleCallback(work, { timeout: 500 });
    else work();
  }, ms);
  return () => {
    clearTimeout(timer);
    if (idle !== undefined) cancelIdleCallback(idle);
  };
}

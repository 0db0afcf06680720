import type { Decision } from '../../domain/decide/decision.ts';
import { type ShownState, shownState, shownStateWords } from '../../domain/words/states.ts';
import type { FloorPlan } from '../../domain/model/floorPlan.ts';
import type { Project } from '../../domain/model/project.ts';
import { type Pinned, pinnedOn, planOfFloor, scaleInWords } from '../../domain/project/floorPlans.ts';
import { counted } from '../../domain/text/counted.ts';

export interface PlanSheet {
  readonly floors: readonly PlanOfFloor[];
  readonly none: string;
  readonly says: string;
}
export interface PlanOfFloor {
  readonly plan: FloorPlan;
  readonly floorName: string;
  /** A closet has no state. */
  readonly pins: readonly (Pinned & { readonly state: ShownState | null })[];
  readonly says: string;
  /** Every state on this plan in words, with its marks: the shapes alone would have to be looked up. */
  readonly words: string;
}

export function planSheet(project: Project, decisions: ReadonlyMap<string, Decision>): PlanSheet {
  const floors = Object.values(project.floors)
    .toSorted((a, b) => a.level - b.level)
    .flatMap((floor): readonly PlanOfFloor[] => {
      const plan = planOfFloor(project, floor.id);
      if (!plan) return [];
      // The drawing names its rooms itself; their pins are for whoever places doors.
      const shown = pinnedOn(project, plan.id).filter(({ is }) => is !== 'space');
      const pins = shown.map((pin) => {
        const decision = decisions.get(pin.id);
        return { ...pin, state: pin.is === 'opening' && decision ? shownState(decision, false) : null };
      });
      return [{ plan, floorName: floor.name, pins, says: scaleInWords(plan), words: statesInWords(pins) }];
    });
  return {
    floors,
    none: 'No floor has a plan yet.',
    says: counted(floors.length, 'floor'),
  };
}

function statesInWords(pins: PlanOfFloor['pins']): string {
  const marks = new Map<ShownState, string[]>();
  for (const { state, name } of pins) if (state) marks.set(state, [...(marks.get(state) ?? []), name]);
  return [...marks].map(([state, names]) => `${shownStateWords[state].word}: ${names.join(', ')}.`).join(' ');
}

import { type Slots, slotOf } from '../logic/slots.ts';
import { R165 } from '../rules/access/R-165-unlawful-lock-found.ts';
import type { SortedSteps } from './steps.ts';

const controlSlot = slotOf('control');

/** The owner wants nothing at this opening, or only what is there today. */
export function isLeftAlone(slots: Slots): boolean {
  const wanted = slots[controlSlot];
  return wanted === 'notControlled' || wanted === 'asToday';
}

/**
 * Nothing is asked for, built in or repaired at an opening that is left alone, and no question is put for it but one:
 * whether what locks it today keeps people in. What was found and what a reviewer must hear of stays.
 */
export function stepsOfLeftAlone(steps: SortedSteps): SortedSteps {
  return {
    ...steps,
    requires: [],
    modifies: [],
    depends: steps.depends.filter(({ rule }) => rule.id === R165.id),
  };
}

import { useState } from 'react';

/**
 * What is being typed over a stored value. When the stored value changes, by undo or from elsewhere, the draft
 * follows it; a refused draft stays, with its sentence.
 */
export function useDraft(stored: string) {
  const [state, setState] = useState({ of: stored, text: stored, problem: '' });
  const now = state.of === stored ? state : { of: stored, text: stored, problem: '' };
  if (now !== state) setState(now);
  return {
    text: now.text,
    problem: now.problem,
    isChanged: now.text !== stored || now.problem !== '',
    type: (text: string) => setState({ ...now, text }),
    refuse: (problem: string | undefined) => setState({ ...now, problem: problem ?? '' }),
  };
}

/** Puts the keyboard where a form that was just opened begins. */
export function focusFirst(element: HTMLElement | null): void {
  element?.focus();
}

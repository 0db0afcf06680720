import { useRef, useState } from 'react';
import { dayOf } from '../../app/today.ts';
import {
  type Asked,
  emptyDraft,
  type VerdictDraft,
  verdictProblems,
  type VerdictProblems,
} from '../../domain/review/draft.ts';
import { useApplication } from '../context.ts';
import { type DraftPlace, useDraft } from '../parts/useDraft.ts';

/** A verdict being filled in. Who signs is remembered in this browser, so that the next one begins with it. */
export function useVerdictDraft(where: DraftPlace, start: Partial<VerdictDraft> = {}) {
  const { clock, preferences } = useApplication();
  const form = useRef<HTMLFormElement>(null);
  const [first] = useState<VerdictDraft>(() => ({
    ...emptyDraft,
    by: preferences.get('yourName'),
    role: preferences.get('yourRole'),
    firm: preferences.get('yourFirm'),
    license: preferences.get('yourLicense'),
    on: dayOf(clock()),
    ...start,
  }));
  const kept = useDraft(where, first);
  const draft = kept.value;
  const [problems, setProblems] = useState<VerdictProblems>({});
  return {
    draft,
    kept,
    problems,
    form,
    day: () => ({ today: dayOf(clock()), dayOf }),
    change: (part: Partial<VerdictDraft>) => {
      kept.type({ ...draft, ...part });
      setProblems({});
    },
    /** True when it can be written; otherwise the keyboard goes to the first field that lacks something. */
    check: (asked: Asked): boolean => {
      const found = verdictProblems(draft, asked);
      setProblems(found);
      const first = Object.keys(found)[0];
      if (first === undefined) {
        preferences.set('yourRole', draft.role);
        preferences.set('yourFirm', draft.firm);
        preferences.set('yourLicense', draft.license);
        return true;
      }
      form.current?.querySelector<HTMLElement>(`[data-part="${first}"]`)?.focus();
      return false;
    },
  };
}

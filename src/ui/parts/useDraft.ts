import { useEffect, useMemo, useState } from 'react';
import type { DraftPlace } from '../../app/draftDesk.ts';
import { useApp, useApplication } from '../context.ts';

export type { DraftPlace } from '../../app/draftDesk.ts';

export interface FieldDraft<T> {
  /** What the field shows: what is typed, else what is stored. */
  readonly value: T;
  readonly isChanged: boolean;
  /** Typed at an earlier visit of the field and found again. */
  readonly isOffered: boolean;
  readonly isReadOnly: boolean;
  readonly problem: string;
  readonly type: (value: T) => void;
  /** It became an edit, or is thrown away: the field shows what is stored. */
  readonly done: () => void;
  /** Ends the draft, or keeps it with the sentence that says why it was refused. */
  readonly settle: (refused: string | undefined) => void;
}

/**
 * What is being typed over a stored value. It is kept with every key outside this component, so it outlives the
 * page, a reload and a crash, and is counted as not saved until it is settled.
 */
export function useDraft<T extends string | object>(where: DraftPlace, stored: T): FieldDraft<T> {
  const { drafts: desk } = useApplication();
  const { place } = where;
  const found = useApp(({ session }) => session.drafts.find((one) => one.place === place));
  const isReadOnly = useApp(({ session, saving }) => !session.ready || saving.kind === 'readOnly');
  /** The place typed at in this visit, and the sentence said there. */
  const [visit, setVisit] = useState({ place: '', problem: '' });
  const kept = found?.value;
  const value = useMemo(() => (kept === undefined ? stored : fitted(kept, stored)), [kept, stored]);
  const isChanged = found !== undefined && !same(value, stored);
  useEffect(() => desk.show(place), [desk, place]);
  // The same came to be stored by another way: nothing is left to be saved.
  const isSettled = found !== undefined && !isChanged;
  useEffect(() => {
    if (isSettled) desk.drop(place);
  }, [desk, place, isSettled]);
  return {
    value,
    isChanged,
    isOffered: isChanged && visit.place !== place,
    isReadOnly,
    problem: visit.place === place ? visit.problem : '',
    type: (next) => {
      setVisit({ place, problem: visit.place === place ? visit.problem : '' });
      if (same(next, stored)) desk.drop(place);
      else desk.type(where, next);
    },
    done: () => {
      setVisit({ place: '', problem: '' });
      desk.drop(place);
    },
    settle: (refused) => {
      setVisit({ place, problem: refused ?? '' });
      if (refused === undefined) desk.drop(place);
    },
  };
}

/** A draft of an older version may lack what a form asks today, or hold it in another shape. */
function fitted<T extends string | object>(kept: unknown, stored: T): T {
  if (typeof stored === 'string') return (typeof kept === 'string' ? kept : stored) as T;
  if (typeof kept !== 'object' || kept === null) return stored;
  const entries = Object.entries(stored).map(([key, now]: [string, unknown]) => {
    const before = Object.hasOwn(kept, key) ? (kept as Record<string, unknown>)[key] : undefined;
    const isAlike =
      before !== undefined && typeof before === typeof now && Array.isArray(before) === Array.isArray(now);
    return [key, isAlike ? before : now];
  });
  return Object.fromEntries(entries) as T;
}

/** Whether a draft waits at a place, so that its form opens by itself. */
export function useHasDraft(place: string): boolean {
  return useApp(({ session }) => session.drafts.some((one) => one.place === place));
}

/** What follows the prefix in the place of a draft that waits there, so that its form opens by itself. */
export function useDrafted(prefix: string): string | null {
  const found = useApp(({ session }) => session.drafts.find((one) => one.place.startsWith(prefix)));
  return found ? found.place.slice(prefix.length) : null;
}

const same = (a: unknown, b: unknown) => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Puts the keyboard where a form that was just opened begins. */
export function focusFirst(element: HTMLElement | null): void {
  element?.focus();
}

import { useCallback } from 'react';
import type { Edit } from '../../domain/commands/command.ts';
import { useStore } from '../context.ts';

/** Does edits as one named step; a returned sentence says why they were refused. */
export function useCommand(): (label: string, edits: readonly Edit[]) => string | undefined {
  const store = useStore();
  return useCallback(
    (label, edits) => {
      const done = store.getState().dispatch(label, edits);
      return done.ok ? undefined : done.says;
    },
    [store],
  );
}

import { z } from 'zod';
import { type LocalKeeper, localBox } from '../localKeeper.ts';

/** What this browser is known to have held. An empty database beside a name in this list is a loss, not a new user. */
const entry = z.object({
  id: z.string(),
  name: z.string(),
  /** Said to be saved, and when. */
  revision: z.number(),
  savedAt: z.string(),
  /** The last copy in a file: when it was handed over, and which state it holds. */
  copiedAt: z.string().optional(),
  copiedRevision: z.number().optional(),
});
export type KnownProject = Readonly<z.infer<typeof entry>>;

export interface KnownProjects {
  readonly all: () => readonly KnownProject[];
  readonly of: (id: string) => KnownProject | undefined;
  readonly note: (id: string, change: Partial<Omit<KnownProject, 'id'>>) => void;
  readonly forget: (id: string) => void;
}

export function createKnownProjects(keeper?: LocalKeeper): KnownProjects {
  const box = localBox('latchward.known.', keeper);
  const of = (id: string) => {
    try {
      return entry.safeParse(JSON.parse(box.get(id) ?? '')).data;
    } catch {
      return undefined;
    }
  };
  return {
    all: () => box.keys().flatMap((id) => of(id) ?? []),
    of,
    note: (id, change) => {
      const before = of(id) ?? { id, name: '', revision: 0, savedAt: '' };
      box.set(id, JSON.stringify({ ...before, ...change }));
    },
    forget: (id) => box.drop(id),
  };
}

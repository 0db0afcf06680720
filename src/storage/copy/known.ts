import { type LocalKeeper, localBox } from '../localKeeper.ts';

/** What this browser is known to have held. An empty database beside a name in this list is a loss, not a new user. */
export interface KnownProject {
  readonly id: string;
  readonly name: string;
  /** Said to be saved, and when. */
  readonly revision: number;
  readonly savedAt: string;
  /** The last copy in a file: when it was handed over, and which state it holds. */
  readonly copiedAt?: string;
  readonly copiedRevision?: number;
}

export interface KnownProjects {
  readonly all: () => readonly KnownProject[];
  readonly of: (id: string) => KnownProject | undefined;
  readonly note: (id: string, change: Partial<Omit<KnownProject, 'id'>>) => void;
  readonly forget: (id: string) => void;
}

export function createKnownProjects(keeper?: LocalKeeper): KnownProjects {
  const box = localBox('latchward.known.', keeper);
  const of = (id: string): KnownProject | undefined => {
    try {
      const read = JSON.parse(box.get(id) ?? '') as Partial<KnownProject> | null;
      const { name, revision, savedAt } = read ?? {};
      const isWhole = typeof name === 'string' && typeof revision === 'number' && typeof savedAt === 'string';
      return isWhole ? ({ ...read, id } as KnownProject) : undefined;
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

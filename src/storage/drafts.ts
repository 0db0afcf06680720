import { type LocalKeeper, localBox } from './localKeeper.ts';

/** What is typed into a field and is no edit yet. */
export interface Draft {
  /** Names the field within the project, the same at every start. */
  readonly place: string;
  /** The field in words, and the page it stands on. */
  readonly label: string;
  readonly href: string;
  readonly at: string;
  /** Plain data, as the field itself wrote it; read back it may be of an older version. */
  readonly value: unknown;
}

/** Drafts of every project in this browser, each written with every key. */
export interface DraftBox {
  readonly all: (projectId: string) => readonly Draft[];
  /** False when it could not be kept: no room, or no such storage. */
  readonly keep: (projectId: string, draft: Draft) => boolean;
  readonly drop: (projectId: string, place: string) => void;
  readonly forget: (projectId: string) => void;
}

export function createDraftBox(keeper?: LocalKeeper): DraftBox {
  const box = localBox('latchward.draft.', keeper);
  const keyOf = (projectId: string, place: string) => `${projectId} ${place}`;
  const keysOf = (projectId: string) => box.keys().filter((key) => key.startsWith(`${projectId} `));
  return {
    all: (projectId) =>
      keysOf(projectId)
        .flatMap((key) => draftOf(box.get(key)) ?? [])
        .toSorted((a, b) => a.at.localeCompare(b.at)),
    keep: (projectId, draft) => box.set(keyOf(projectId, draft.place), JSON.stringify(draft)),
    drop: (projectId, place) => box.drop(keyOf(projectId, place)),
    forget: (projectId) => {
      for (const key of keysOf(projectId)) box.drop(key);
    },
  };
}

function draftOf(text: string | undefined): Draft | undefined {
  try {
    const read = JSON.parse(text ?? '') as Partial<Draft> | null;
    const { place, label, href, at } = read ?? {};
    const isWhole = [place, label, href, at].every((one) => typeof one === 'string');
    return isWhole ? (read as Draft) : undefined;
  } catch {
    return undefined;
  }
}

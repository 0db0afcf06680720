import { type LocalKeeper, localBox } from '../localKeeper.ts';
import { type Line, lineOfText, lineToText } from './lines.ts';

/**
 * Edits that nothing slower has confirmed yet, each written before it is painted. A page that is closed or
 * reloaded a moment after an edit cannot wait for a database, and this is there at the next start.
 */
export interface Journal {
  /** False when the line could not be kept: no room, or no such storage. */
  readonly keep: (projectId: string, line: Line) => boolean;
  readonly drop: (projectId: string, revision: number) => void;
  readonly lines: (projectId: string) => readonly Line[];
  readonly forget: (projectId: string) => void;
}

export function createJournal(keeper?: LocalKeeper): Journal {
  const box = localBox('latchward.line.', keeper);
  const keyOf = (projectId: string, revision: number) => `${projectId} ${revision}`;
  const keysOf = (projectId: string) => box.keys().filter((key) => key.startsWith(`${projectId} `));
  return {
    keep: (projectId, line) => box.set(keyOf(projectId, line.revision), lineToText(line)),
    drop: (projectId, revision) => box.drop(keyOf(projectId, revision)),
    lines: (projectId) => keysOf(projectId).flatMap((key) => lineOfText(box.get(key) ?? '') ?? []),
    forget: (projectId) => {
      for (const key of keysOf(projectId)) box.drop(key);
    },
  };
}

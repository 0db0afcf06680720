import type { KnownProject } from '../storage/copy/known.ts';

/** Where the work is kept and how safe that is, as the Files page says it. */
export function whereKept(state: {
  readonly oneCopy: string;
  readonly persisted: boolean;
  readonly known: KnownProject | undefined;
  readonly revision: number;
}): readonly string[] {
  const { oneCopy, persisted, known, revision } = state;
  return [
    oneCopy === ''
      ? 'Kept twice in this browser: in its database and in a second copy outside it.'
      : `Kept once in this browser, in its database only: there is no second copy (${oneCopy}). Save copies to a file often.`,
    persisted
      ? 'The browser has agreed not to delete it when space runs short.'
      : 'The browser has not agreed to keep it when space runs short.',
    lastCopy(known, revision),
    'Clearing the data of this site removes both. A file is the only copy that outlives that.',
  ];
}

/** When the project last went into a file, and whether that file still holds all of it. */
export function lastCopy(known: KnownProject | undefined, revision: number): string {
  if (known?.copiedAt === undefined)
    return 'No copy of this project was saved to a file from this browser yet.';
  const when = `${known.copiedAt.slice(0, 16).replace('T', ' ')} UTC`;
  return known.copiedRevision === revision
    ? `Last copy saved to a file: ${when}. Nothing has changed since.`
    : `Last copy saved to a file: ${when}. The project has changed since.`;
}

import type { Project } from '../../domain/model/project.ts';
import type { HistoryLine } from '../../domain/trail/history.ts';
import { csvText } from './cells.ts';

export const historyColumns = ['When', 'Who', 'Openings', 'What'] as const;

/** The history as a table, the newest first; times are world time. */
export function historyCsv({ openings }: Project, lines: readonly HistoryLine[]): string {
  return csvText(
    historyColumns,
    lines.map(({ at, by, says, openingIds }) => [
      at,
      by,
      openingIds.map((id) => openings[id]?.mark ?? 'removed since').join('; '),
      says,
    ]),
  );
}

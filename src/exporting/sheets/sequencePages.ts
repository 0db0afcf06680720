import { openingsInOrder, type Project } from '../../domain/model/project.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import { type SequenceSheet, sequenceSheets } from '../sequence/sheets.ts';
import { counted } from '../../domain/text/counted.ts';

/** What the openings of one hardware set do, event by event. */
export interface SequenceBlock {
  readonly id: string;
  readonly title: string;
  /** More than one where openings of the set differ in hours, alarm or battery. */
  readonly ways: readonly SequenceWay[];
}
export interface SequenceWay {
  /** Empty where all openings of the set act alike. */
  readonly head: string;
  readonly count: string;
  readonly marks: readonly string[];
  readonly unsettled: string;
  readonly lines: SequenceSheet['lines'];
}
export interface SequencePages {
  readonly says: string;
  readonly sets: readonly SequenceBlock[];
  /** Openings at which nothing is chosen, so that none is missed. */
  readonly without: readonly string[];
}

/** Sequences of operation by hardware set, under the numbers of the hardware sets. */
export function sequencePages(project: Project, decisions: Decisions): SequencePages {
  const sheets = sequenceSheets(project, decisions);
  const bySet = new Map<string, SequenceSheet[]>();
  for (const sheet of sheets) bySet.set(sheet.setId, [...(bySet.get(sheet.setId) ?? []), sheet]);
  const placed = new Set(sheets.flatMap((one) => one.marks));
  const sets = [...bySet]
    .map(
      ([id, ways]): SequenceBlock => ({
        id,
        title: ways[0]?.title ?? '',
        ways: ways.map((way, index) => ({
          head: ways.length === 1 ? '' : `Way ${index + 1} of ${ways.length}`,
          count: counted(way.marks.length, 'opening'),
          marks: way.marks,
          unsettled:
            way.provisional.length === 0 ? '' : `Not settled yet, may change: ${way.provisional.join(', ')}`,
          lines: way.lines,
        })),
      }),
    )
    .toSorted((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
  return {
    says: counted(sets.length, 'set'),
    sets,
    without: openingsInOrder(project)
      .map((opening) => opening.mark)
      .filter((mark) => !placed.has(mark)),
  };
}

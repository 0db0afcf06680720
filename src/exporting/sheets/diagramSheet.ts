import { candidateInWords } from '../../domain/words/arrangement.ts';
import type { Opening, Project } from '../../domain/model/project.ts';
import { scheduleRows } from '../../domain/schedules/openings.ts';
import { type Decisions } from '../../domain/decide/decision.ts';
import { drawingsAt, openingDrawings } from '../drawing/kinds.ts';
import type { Drawing } from '../drawing/scene.ts';
import { placeInWords } from './openingSheet.ts';
import { counted } from '../../domain/text/counted.ts';

/** The circuit of one opening, with what the electrician looks for it by. */
export interface DiagramEntry {
  readonly id: string;
  readonly mark: string;
  readonly place: string;
  /** "HS-18 · Electromagnetic lock, fail safe"; says so where it is not settled. */
  readonly arrangement: string;
  readonly drawings: readonly Drawing[];
}
export interface DiagramSheet {
  readonly says: string;
  readonly entries: readonly DiagramEntry[];
}

/** The circuits of the openings shown, in their order; an opening whose lock hangs on no wire has none. */
export function diagramSheet(
  project: Project,
  decisions: Decisions,
  shown: readonly Opening[],
): DiagramSheet {
  const rows = new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]));
  const entries = shown.flatMap((opening): readonly DiagramEntry[] => {
    const [row, decision] = [rows.get(opening.id), decisions.get(opening.id)];
    if (!row || !decision?.chosen) return [];
    const drawings = drawingsAt(openingDrawings, decision, 'ownSheet');
    if (drawings.length === 0) return [];
    const words = [row.set, candidateInWords(decision.chosen.candidate)].filter((one) => one !== '');
    if (decision.state !== 'settled') words.push(row.stateWord);
    return [
      {
        id: opening.id,
        mark: opening.mark,
        place: placeInWords(row),
        arrangement: words.join(' · '),
        drawings,
      },
    ];
  });
  return { says: counted(entries.length, 'opening'), entries };
}

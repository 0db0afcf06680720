import { billOf } from '../domain/bid/bill.ts';
import type { Opening, Project } from '../domain/model/project.ts';
import { scheduleRows } from '../domain/schedules/openings.ts';
import { type Decisions } from '../domain/decide/decision.ts';
import { billSheet } from '../exporting/sheets/billSheet.ts';
import { buildingLines } from '../exporting/sheets/buildingLines.ts';
import { scheduleSheet } from '../exporting/sheets/doorSchedule.ts';
import { findingsSheet } from '../exporting/sheets/findingsSheet.ts';
import { loadsSheet } from '../exporting/sheets/loadsSheet.ts';
import { packetSheet } from '../exporting/sheets/packetSheet.ts';
import { countLines } from '../exporting/sheets/parts.ts';
import { powerPaper } from '../exporting/sheets/powerPaper.ts';
import { reviewRegister } from '../exporting/sheets/reviewRegister.ts';
import { sequencePages } from '../exporting/sheets/sequencePages.ts';
import { setSheet } from '../exporting/sheets/setSheet.ts';
import type { SheetId } from '../exporting/sheets/sheetKinds.ts';
import type { Stamp } from '../exporting/sheets/stamp.ts';
import { testPages, testPapers } from '../exporting/sheets/testPages.ts';
import { buildingFindingsFor, pathFindingsFor, spaceEgressFor } from './buildings.ts';
import { powerFor } from './power.ts';
import { reportFor } from './reports.ts';
import { questionsFor } from './review.ts';

const once = <T>(make: () => T) => {
  let made: { readonly what: T } | undefined;
  return (): T => (made ??= { what: make() }).what;
};

/**
 * What stands on the sheets of a project, each made when it is first asked for and kept, because paper is laid out part
 * by part. What is drawn by opening is left to the part that shows it: of thousands it would fill the memory.
 */
export function sheetData(project: Project, decisions: Decisions, shown: readonly Opening[], stamp: Stamp) {
  const bill = once(() => billOf(project, decisions));
  return {
    bill,
    rows: once(() => new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]))),
    schedule: once(() => scheduleSheet(project, decisions)),
    sets: once(() => setSheet(project, decisions)),
    quantities: once(() => billSheet(project, bill(), [], false)),
    priced: once(() => billSheet(project, bill(), [], true)),
    sequence: once(() => sequencePages(project, decisions)),
    power: once(() => powerPaper(project, decisions, powerFor(project))),
    tests: once(() => testPapers(testPages(project, decisions, shown, stamp))),
    register: once(() => ({
      entries: reviewRegister(project, decisions),
      building: buildingLines(project, pathFindingsFor(project)),
    })),
    packet: once(() => packetSheet(project, questionsFor(project), reportFor)),
    findings: once(() => findingsSheet(project, buildingFindingsFor(project))),
    loads: once(() => loadsSheet(project, spaceEgressFor(project))),
  };
}
export type SheetData = ReturnType<typeof sheetData>;

/** Between how many items a sheet can be divided. Nothing to show is no paper, except where that is itself worth saying. */
export function itemsOf(id: SheetId, data: SheetData, shown: number, hasAddendum: boolean): number {
  switch (id) {
    case 'schedule':
      return countLines(data.schedule().floors);
    case 'sets': {
      const { sets, shared, without } = data.sets();
      return Math.max(1, sets.length + shared.length + without.length);
    }
    case 'quantities':
    case 'bill':
      return Math.max(1, countLines(data.quantities().blocks) + data.quantities().allowances.length);
    case 'sequence':
      return Math.max(1, data.sequence().sets.length);
    case 'openings':
    case 'diagrams':
      return shown;
    case 'tests':
      return data.tests().length;
    case 'power':
      // The tables are one, and each drawing of a set another.
      return 1 + data.power().wirings.length;
    case 'register':
      return Math.max(1, data.register().entries.length + data.register().building.length);
    case 'packet':
      return Math.max(1, data.packet().questions.length + data.packet().openings.length);
    case 'findings':
      return Math.max(1, countLines(data.findings().groups));
    case 'loads':
      return Math.max(1, countLines(data.loads().floors));
    case 'addendum':
      return hasAddendum ? 1 : 0;
    case 'cover':
    case 'basis':
    case 'plans':
    case 'legend':
      return 1;
  }
}

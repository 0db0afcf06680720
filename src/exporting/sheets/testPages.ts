import type { Opening, Project } from '../../domain/model/project.ts';
import { scheduleRows } from '../../domain/schedules/openings.ts';
import { type Decisions } from '../../domain/decide/decision.ts';
import { type TestSheet, testSheets } from '../sequence/sheets.ts';
import { placeInWords } from './openingSheet.ts';
import type { Stamp } from './stamp.ts';
import { type TitleCell, titleBlock } from './titleBlock.ts';

/** The functional acceptance test of one opening, with place and title block: it is taken to the door alone. */
export interface TestPage {
  readonly id: string;
  readonly mark: string;
  readonly place: string;
  /** "HS-18 · Electromagnetic lock, fail safe · …". */
  readonly arrangement: string;
  readonly unsettled: string;
  /** Why no test is written; empty where one is. */
  readonly noTest: string;
  readonly lines: TestSheet['lines'];
  /** So many lines that they are set smaller, to keep the test on one page. */
  readonly crowded: boolean;
  readonly title: readonly TitleCell[];
}

/** Lines that fit on a page in letters of the usual size; found by printing the demo building. */
const crowdedFrom = 17;
/** So many fit on half a page with the lines to sign on. */
const shortUpTo = 9;

export function testPages(
  project: Project,
  decisions: Decisions,
  shown: readonly Opening[],
  stamp: Stamp,
): readonly TestPage[] {
  const rows = new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]));
  const sheets = new Map(testSheets(project, decisions).map((sheet) => [sheet.openingId, sheet]));
  return shown.flatMap((opening) => {
    const [row, sheet] = [rows.get(opening.id), sheets.get(opening.id)];
    return row && sheet
      ? [
          {
            id: opening.id,
            mark: sheet.mark,
            place: placeInWords(row),
            arrangement: [sheet.setId, sheet.title].filter((part) => part !== '').join(' · '),
            unsettled: sheet.provisional ? 'Not settled yet: what is expected here may change.' : '',
            noTest:
              sheet.noTest.length === 0
                ? ''
                : `No test is written for this arrangement. ${sheet.noTest.join(' ')} Change it, or get the authority’s written decision first.`,
            lines: sheet.lines,
            crowded: sheet.lines.length > crowdedFrom,
            title: titleBlock(project, 'tests', stamp, { label: 'Opening', value: opening.mark }),
          },
        ]
      : [];
  });
}

/** A page of paper with one test, or with two that are short, each with its own lines to sign on. */
export interface TestPaper {
  readonly id: string;
  readonly tests: readonly TestPage[];
  /** Of both, at the foot of the page. */
  readonly title: readonly TitleCell[];
}

const isShort = ({ lines }: TestPage) => lines.length <= shortUpTo;

/** In the order of the openings, but that a short test brings the next short one along. */
export function testPapers(pages: readonly TestPage[]): readonly TestPaper[] {
  const short = pages.filter(isShort);
  const second = new Map<TestPage, TestPage | undefined>(
    short.flatMap((page, at) => (at % 2 === 0 ? [[page, short[at + 1]] as const] : [])),
  );
  return pages.flatMap((page): readonly TestPaper[] => {
    if (isShort(page) && !second.has(page)) return [];
    const other = second.get(page);
    if (!other) return [{ id: page.id, tests: [page], title: page.title }];
    const both = `${page.mark}, ${other.mark}`;
    const title = page.title.map((cell, at) =>
      at === page.title.length - 1 ? { label: 'Openings', value: both } : cell,
    );
    return [{ id: page.id, tests: [page, other], title }];
  });
}

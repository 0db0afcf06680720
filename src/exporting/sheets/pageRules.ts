import { standingCaution } from '../../domain/text/cautions.ts';
import { basisInWords } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import { dayInWords } from './day.ts';
import type { Stamp } from './stamp.ts';
import { type PaperSize, paperSizes, type SheetId, sheetIds, sheetNames } from './sheetNames.ts';

/**
 * Page rules for the whole print. What must stand on every page, however loose it gets, is set in the margins:
 * whose sheet it is, under which code basis, how far it may be relied on, the caution, and which page of how many, and of
 * which part where they are printed in several.
 */
export function pageRules(project: Project, stamp: Stamp, paper: PaperSize, part = ''): string {
  const { name, basis, preparedBy } = project;
  const { day, issued, standing } = stamp;
  const edition = issued ? `Edition ${issued.number}` : 'Not issued';
  const owner = [name, edition, basisInWords(basis), dayInWords(day), preparedBy].filter((one) => one !== '');
  return pages
    .map(
      ({ id, name: page, landscape }) => `@page ${page} {
  size: ${sizeOf(id, paper, landscape)};
  margin: 0.62in 0.5in 0.72in;
  @top-left { content: ${cssString(owner.join('  ·  '))}; ${lettering} width: 55%; }
  @top-right { content: ${cssString([standing, sheetNames[id]].filter((one) => one !== '').join('  ·  '))}; ${lettering} width: 45%; text-align: right; }
  @bottom-left { content: ${cssString(standingCaution)}; ${smallText} width: 82%; }
  @bottom-right { content: ${cssString(part === '' ? '' : `${part} · `)} "Page " counter(page) " of " counter(pages); ${lettering} width: 18%; text-align: right; }
}`,
    )
    .join('\n');
}

const lettering =
  'font: 600 8.5pt "Barlow Condensed", "Arial Narrow", Arial, sans-serif; color: #000; vertical-align: middle;';
const smallText =
  'font: 500 8.5pt/1.2 "Barlow Condensed", "Arial Narrow", Arial, sans-serif; color: #000; vertical-align: middle; text-align: left;';

const landscape: readonly SheetId[] = ['register', 'findings', 'loads', 'basis', 'power', 'plans'];

/** Each kind of sheet has a page of its own, and wiring, which belongs to power, an upright one. */
const pages = [
  ...sheetIds.map((id) => ({ id, name: `sheet-${id}`, landscape: landscape.includes(id) })),
  { id: 'power', name: 'sheet-wiring', landscape: false },
] as const;

function sizeOf(id: SheetId, paper: PaperSize, isLandscape: boolean): string {
  const sizes = paperSizes[paper];
  if (id === 'schedule') return sizes.wide;
  return isLandscape ? sizes.landscape : sizes.page;
}

/** A project may be called anything; its name must not end the string, the rule or the style sheet. */
export function cssString(text: string): string {
  const escaped = text.replace(
    /["\\<>\p{Cc}]/gu,
    (character) => `\\${character.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped}"`;
}

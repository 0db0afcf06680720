import { standingCaution } from '../../domain/text/cautions.ts';
import { basisInWords } from '../../domain/codes/basis.ts';
import type { Project } from '../../domain/model/project.ts';
import { dayInWords } from './day.ts';
import type { Stamp } from './stamp.ts';
import {
  type PaperSize,
  paperSizes,
  type SheetId,
  sheetIds,
  type SheetKind,
  sheetKinds,
} from './sheetKinds.ts';

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
  const rules = pages.map(
    ({ id, name: page, on }) => `@page ${page} {
  size: ${sizeOf(paper, on)};
  margin: 0.62in 0.5in 0.72in;
  @top-left { content: ${cssString(owner.join('  ·  '))}; ${lettering} width: 55%; }
  @top-right { content: ${cssString([standing, sheetKinds[id].name].filter((one) => one !== '').join('  ·  '))}; ${lettering} width: 45%; text-align: right; }
  @bottom-left { content: ${cssString(standingCaution)}; ${smallText} width: 82%; }
  @bottom-right { content: ${cssString(part === '' ? '' : `${part} · `)} "Page " counter(page) " of " counter(pages); ${lettering} width: 18%; text-align: right; }
}`,
  );
  return [...sheetIds.map((id) => placeOf(id, paper)), ...rules].join('\n');
}

const lettering =
  'font: 600 8.5pt "Barlow Condensed", "Arial Narrow", Arial, sans-serif; color: #000; vertical-align: middle;';
const smallText =
  'font: 500 8.5pt/1.2 "Barlow Condensed", "Arial Narrow", Arial, sans-serif; color: #000; vertical-align: middle; text-align: left;';

/** Each kind of sheet has a page of its own, and wiring, which belongs to power, an upright one. */
const pages: readonly { readonly id: SheetId; readonly name: string; readonly on: SheetKind['paper'] }[] = [
  ...sheetIds.map((id) => ({ id, name: `sheet-${id}`, on: sheetKinds[id].paper })),
  { id: 'power', name: 'sheet-wiring', on: 'upright' },
];

/** On which of these pages a sheet stands, though a part of it may ask for another, and how wide it is in the preview. */
const placeOf = (id: SheetId, paper: PaperSize) => {
  const [width] = sizeOf(paper, sheetKinds[id].paper).split(' ');
  return `.paper-${id} { page: sheet-${id}; }\n@media not print { .paper-${id} { width: ${width}; } }`;
};

function sizeOf(paper: PaperSize, on: SheetKind['paper']): string {
  const sizes = paperSizes[paper];
  return { schedule: sizes.wide, landscape: sizes.landscape, upright: sizes.page }[on];
}

/** A project may be called anything; its name must not end the string, the rule or the style sheet. */
export function cssString(text: string): string {
  const escaped = text.replace(
    /["\\<>\p{Cc}]/gu,
    (character) => `\\${character.codePointAt(0)?.toString(16)} `,
  );
  return `"${escaped}"`;
}

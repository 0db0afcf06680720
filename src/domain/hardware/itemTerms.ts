import { itemOf, type ItemId, items, type Section, sectionOf, sections, trades } from '../devices/items.ts';
import { type FinishCode, finishes } from '../devices/finishes.ts';
import { type ItemEntry, noEntry } from '../model/bid.ts';
import type { Project } from '../model/project.ts';

/** What stands in every line of an item, whatever opening it is for. */
export interface ItemTerms {
  readonly section: Section;
  /** "626 satin chromium on brass or bronze"; empty where the item has none. */
  readonly finish: string;
  readonly keySet: string;
  readonly suppliedBy: string;
  readonly installedBy: string;
  readonly wiredBy: string;
}

const toBeStated = 'not stated';

/** Said in the item book, or usual in the trade; a finish or key set that nobody stated says so. */
export function itemTerms(project: Project, item: ItemId): ItemTerms {
  const { finished, keyed } = itemOf(item);
  const said = entryOf(project, item);
  const trade = trades[items[item].trade];
  return {
    section: sectionOf(item),
    finish: finishInWords(said.finish) || (finished ? toBeStated : ''),
    keySet: said.keySet || (keyed ? toBeStated : ''),
    suppliedBy: said.suppliedBy || trade,
    installedBy: said.installedBy || trade,
    wiredBy: said.wiredBy || usuallyWiredBy(item),
  };
}

export function entryOf({ itemBook }: Project, item: string): ItemEntry {
  return (Object.hasOwn(itemBook, item) ? itemBook[item] : undefined) ?? noEntry(item);
}

/** Who pulls and lands the wire where the contract says nothing. Common practice, no source. */
function usuallyWiredBy(item: ItemId): string {
  const { electrified, step, trade, block } = itemOf(item);
  if (block !== undefined) return '';
  if (electrified) return trades.security;
  return step === 'electrical' && trade !== 'signs' && trade !== 'owner' ? trades[trade] : '';
}

function finishInWords(code: string): string {
  if (!Object.hasOwn(finishes, code)) return code;
  const { look, metal } = finishes[Number(code) as FinishCode];
  return metal === 'any' ? `${code} ${look}` : `${code} ${look} on ${metal}`;
}

export function sectionInWords(section: Section): string {
  return `${section} ${sections[section]}`;
}

export interface Unstated {
  readonly finish: readonly ItemId[];
  readonly keySet: readonly ItemId[];
}

/** Items among those bought that are ordered by a finish or a key set nobody stated: each is a call to make. */
export function unstated(project: Project, bought: Iterable<ItemId>): Unstated {
  const all = [...new Set(bought)];
  return {
    finish: all.filter((item) => itemOf(item).finished && entryOf(project, item).finish === ''),
    keySet: all.filter((item) => itemOf(item).keyed && entryOf(project, item).keySet === ''),
  };
}

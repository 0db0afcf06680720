import { type PageId, pageWords } from '../domain/manual/pages.ts';

/**
 * What an address may name besides its page: the opening shown, the rule, the space, the one sheet wanted. Every
 * link and every move of the app is written here, so none can lead to a page that is not there or hold an id unescaped.
 */
type Name<P extends PageId> = P extends 'opening'
  ? [openingId: string]
  : P extends 'walk' | 'rules' | 'building' | 'print'
    ? [name?: string]
    : [];

/** The address after `#` of a page, and of one thing on it. */
export function linkTo<P extends PageId>(page: P, ...[name]: Name<P>): string {
  if (!name) return `#/${page}`;
  return page === 'print'
    ? `#/${page}?only=${encodeURIComponent(name)}`
    : `#/${page}/${encodeURIComponent(name)}`;
}

/** Where an address leads, so that Back, reload and a copied link work; `name` is '' where it names the page alone. */
export interface Route {
  readonly page: PageId;
  readonly name: string;
}

/** Addresses of earlier versions, which somebody may have kept. */
const formerWords: Readonly<Record<string, PageId>> = { bill: 'pricing' };

/** Anything that is not an address of ours leads to the schedule. */
export function routeOf(address: string): Route {
  const [, said = '', id = '', only = ''] = /^#?\/?([^/?]*)\/?([^?]*)(?:[?]only=(.*))?/.exec(address) ?? [];
  const former = Object.hasOwn(formerWords, said) ? formerWords[said] : undefined;
  const page = former ?? (Object.hasOwn(pageWords, said) ? (said as PageId) : 'schedule');
  const name = unescaped(page === 'print' ? only : id);
  return { page: page === 'opening' && name === '' ? 'schedule' : page, name };
}

function unescaped(name: string): string {
  try {
    const named = decodeURIComponent(name);
    // A name that every object inherits is no id of ours (idSchema) and would be found in an empty project.
    return named in {} ? '' : named;
  } catch {
    return '';
  }
}

/** Pages whose address names an opening. */
export const namesOpening = (page: PageId): page is 'opening' | 'walk' =>
  page === 'opening' || page === 'walk';

/** Moves the app. */
export function moveTo<P extends PageId>(page: P, ...name: Name<P>): void {
  location.hash = linkTo(page, ...name);
}

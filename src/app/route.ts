import type { PageId } from '../domain/manual/pages.ts';

/** Where the app stands, as an address after `#`, so that Back, reload and a copied link work. */
export interface Route {
  readonly page: PageId;
  readonly openingId: string | null;
}

const words: Record<PageId, string> = {
  schedule: 'schedule',
  opening: 'opening',
  walk: 'walk',
  plan: 'plan',
  project: 'project',
  review: 'review',
  building: 'building',
  pricing: 'pricing',
  power: 'power',
  print: 'print',
  rules: 'rules',
  files: 'files',
  legend: 'legend',
};

export function addressOf(route: Route): string {
  const id = route.openingId === null ? '' : `/${encodeURIComponent(route.openingId)}`;
  return `#/${words[route.page]}${id}`;
}

/** Addresses of earlier versions, which somebody may have kept. */
const formerWords: Readonly<Record<string, string>> = { bill: 'pricing' };

/** Anything that is not an address of ours leads to the schedule. */
export function routeOf(address: string): Route {
  const [said = '', id] = address
    .replace(/^#\/?/, '')
    .replace(/[?].*$/, '')
    .split('/');
  const word = Object.hasOwn(formerWords, said) ? formerWords[said] : said;
  const page = (Object.keys(words) as PageId[]).find((one) => words[one] === word) ?? 'schedule';
  let openingId: string | null = null;
  if (id) {
    try {
      const named = decodeURIComponent(id);
      // A name that every object inherits is no id of ours (idSchema) and would be found in an empty project.
      openingId = named in {} ? null : named;
    } catch {
      openingId = null;
    }
  }
  return { page: page === 'opening' && openingId === null ? 'schedule' : page, openingId };
}

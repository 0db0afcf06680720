import {
  type CodeBasis,
  ibcEditions,
  necEditions,
  nfpa101Editions,
  nfpa72Editions,
} from '../domain/codes/basis.ts';

const editions = {
  ibc: ibcEditions,
  nfpa101: nfpa101Editions,
  nec: necEditions,
  nfpa72: nfpa72Editions,
} as const satisfies Record<keyof CodeBasis, readonly number[]>;
type Book = keyof typeof editions;
const books = Object.keys(editions) as Book[];

export type ReadBasis =
  | { readonly ok: true; readonly basis: CodeBasis }
  | { readonly ok: false; readonly says: string };

/** "ibc2021,nfpa101-2021": the books named are adopted in that edition or, with "none", left out; others stay. */
export function readBasis(text: string, start: CodeBasis): ReadBasis {
  const basis: Record<string, number | null> = {};
  for (const part of text.split(',').map((one) => one.trim().toLowerCase())) {
    const found = /^(nfpa101|nfpa72|ibc|nec)-?(\d{4}|none)$/.exec(part);
    const book = found?.[1] as Book | undefined;
    if (!book)
      return { ok: false, says: `“${part}” names no code; write one of ${books.join(', ')} with its year.` };
    const year = found?.[2] === 'none' ? null : Number(found?.[2]);
    if (year !== null && !(editions[book] as readonly number[]).includes(year)) {
      const known = editions[book].join(', ');
      return { ok: false, says: `${book} ${year} is not among the editions known here: ${known}.` };
    }
    basis[book] = year;
  }
  return { ok: true, basis: { ...start, ...basis } };
}

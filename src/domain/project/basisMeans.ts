import {
  books,
  type CodeBasis,
  ibcEditions,
  necEditions,
  nfpa101Editions,
  nfpa72Editions,
} from '../codes/basis.ts';

export type AdoptedBook = 'ibc' | 'nfpa101' | 'nec' | 'nfpa72';

export const editionsOf: Readonly<Record<AdoptedBook, readonly number[]>> = {
  ibc: ibcEditions,
  nfpa101: nfpa101Editions,
  nec: necEditions,
  nfpa72: nfpa72Editions,
};

export const bookIsAbout: Readonly<Record<AdoptedBook, string>> = {
  ibc: 'Building code: egress, fire doors, locks',
  nfpa101: 'Life safety code: egress, health care, schools',
  nec: 'Electrical code: wiring, rooms with large equipment',
  nfpa72: 'Fire alarm code: what the alarm does to locks',
};

/** The basis with one book in another edition; a text that is no edition takes the book out. */
export function withEdition(basis: CodeBasis, book: AdoptedBook, text: string): CodeBasis {
  const year = editionsOf[book].find((one) => String(one) === text) ?? null;
  return { ...basis, [book]: year };
}

/** What the chosen books together mean, in sentences. */
export function basisMeans(basis: CodeBasis): readonly string[] {
  const { ibc, nfpa101 } = basis;
  const said: string[] = [];
  if (ibc !== null && nfpa101 !== null) {
    said.push(
      `${books.ibc} ${ibc} and ${books.nfpa101} ${nfpa101} both apply, and the stricter of the two governs at every opening.`,
    );
  } else if (ibc !== null) {
    said.push(`Egress is judged under ${books.ibc} ${ibc}; ${books.nfpa101} is not applied.`);
  } else if (nfpa101 !== null) {
    said.push(`Egress is judged under ${books.nfpa101} ${nfpa101}; the ${books.ibc} is not applied.`);
  } else {
    said.push(
      'Neither building code nor life safety code is adopted: only rules that apply everywhere are checked. Ask the authority what applies.',
    );
  }
  const silent = (['nec', 'nfpa72'] as const).filter((book) => basis[book] === null);
  if (silent.length > 0) {
    said.push(`Rules of ${silent.map((book) => books[book]).join(' and ')} are not applied.`);
  }
  said.push('OSHA, the ADA Standards, NFPA 80 and trade practice apply whatever is chosen here.');
  return said;
}

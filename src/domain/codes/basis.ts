import { z } from 'zod';

/** Books a rule can rest on. `project` rules are this product's own policy; `practice` is trade practice or physics. */
export const books = {
  ibc: 'IBC',
  nfpa101: 'NFPA 101',
  nfpa80: 'NFPA 80',
  nfpa72: 'NFPA 72',
  nec: 'NEC (NFPA 70)',
  osha: 'OSHA 29 CFR 1910',
  ada: '2010 ADA Standards',
  a117: 'ICC A117.1',
  ifc: 'IFC',
  ul: 'UL listing',
  bhma: 'ANSI/BHMA A156',
  a17: 'ASME A17.1',
  icc500: 'ICC 500',
  practice: 'Common practice',
  project: 'Policy of this schedule',
} as const;
export type Book = keyof typeof books;

export const ibcEditions = [2018, 2021, 2024] as const;
export const nfpa101Editions = [2018, 2021, 2024] as const;
export const necEditions = [2017, 2020, 2023] as const;
export const nfpa72Editions = [2010, 2016, 2019, 2022] as const;
export type IbcEdition = (typeof ibcEditions)[number];
export type Nfpa101Edition = (typeof nfpa101Editions)[number];
export type NecEdition = (typeof necEditions)[number];

/**
 * The codes and editions a project is judged under. `null` means not adopted. With both IBC and NFPA 101
 * adopted the stricter governs, because every rule of both is judged. OSHA, ADA, NFPA 80 and trade rules
 * always apply. Whether the basis was confirmed with the authority is a fact of the building.
 */
export const codeBasisSchema = z.looseObject({
  ibc: z.literal(ibcEditions).nullable(),
  nfpa101: z.literal(nfpa101Editions).nullable(),
  nec: z.literal(necEditions).nullable(),
  nfpa72: z.literal(nfpa72Editions).nullable(),
});
export type CodeBasis = Readonly<z.infer<typeof codeBasisSchema>>;

export const defaultBasis: CodeBasis = { ibc: 2021, nfpa101: null, nec: 2020, nfpa72: 2019 };

/** "IBC 2021 · NEC 2020" — the words printed in every title block. */
export function basisInWords(basis: CodeBasis): string {
  const parts = (['ibc', 'nfpa101', 'nec', 'nfpa72'] as const)
    .filter((book) => basis[book] !== null)
    .map((book) => `${books[book]} ${basis[book]}`);
  return parts.length > 0 ? parts.join(' · ') : 'no code basis chosen';
}

export function basisKey(basis: CodeBasis): string {
  return `${basis.ibc}/${basis.nfpa101}/${basis.nec}/${basis.nfpa72}`;
}

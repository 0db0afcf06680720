/** What can be printed, in the order in which it is bound. */
export const sheetIds = [
  'cover',
  'addendum',
  'schedule',
  'sets',
  'quantities',
  'bill',
  'sequence',
  'openings',
  'diagrams',
  'power',
  'tests',
  'register',
  'packet',
  'findings',
  'loads',
  'basis',
  'plans',
  'legend',
] as const;
export type SheetId = (typeof sheetIds)[number];

export const sheetNames: Record<SheetId, string> = {
  cover: 'Cover',
  addendum: 'Addendum',
  schedule: 'Door schedule',
  sets: 'Hardware sets',
  quantities: 'Quantities, bidder’s copy',
  bill: 'Pricing',
  sequence: 'Sequence of operation',
  openings: 'Opening sheets',
  diagrams: 'One-line diagrams',
  power: 'Power and cable',
  tests: 'Acceptance test sheets',
  register: 'Review register',
  packet: 'Packet for the authority',
  findings: 'Building findings',
  loads: 'Loads and exits',
  basis: 'Another basis, side by side',
  plans: 'Floor plans',
  legend: 'Legend',
};

/** Something for each opening, so they are printed of those the schedule shows. */
export function isPerOpening(id: SheetId): boolean {
  return id === 'openings' || id === 'diagrams' || id === 'tests';
}

/** Size of the door schedule; the other sheets take the portrait size that lies in the same drawer. */
export const paperSizes = {
  tabloid: { name: '17 × 11 in', wide: '17in 11in', page: '8.5in 11in', landscape: '11in 8.5in' },
  a3: { name: 'A3 landscape', wide: '420mm 297mm', page: '210mm 297mm', landscape: '297mm 210mm' },
  letter: { name: 'Letter landscape', wide: '11in 8.5in', page: '8.5in 11in', landscape: '11in 8.5in' },
} as const;
export type PaperSize = keyof typeof paperSizes;

export function isPaperSize(word: string): word is PaperSize {
  return Object.hasOwn(paperSizes, word);
}

/** A kind of sheet, as far as it is paper; what stands on it is made elsewhere. */
export interface SheetKind {
  readonly name: string;
  readonly paper: 'schedule' | 'upright' | 'landscape';
  /** Share of a page that one item takes; counted on paper of projects of 108 and 500 openings, and of no other use. */
  readonly pagesEach: number;
  /** A page fills as much memory as so many others: hundreds of cells on each, or thousands of lines. */
  readonly weight?: number;
  /** Something for each opening, so it is printed of those the schedule shows. */
  readonly byOpening?: true;
  /**
   * Ticked at first. Sheets by opening and sequences are not: of a large building they are most of the paper. Loads and
   * exits and another basis are for a reviewer and no part of what goes out to be priced, and a priced bill is for nobody
   * but its owner. Of a building with drawings the plans are: a floor is known by its plan on site.
   */
  readonly usual: boolean | 'withPlans';
}

const sheets = {
  cover: { name: 'Cover', paper: 'upright', pagesEach: 2, usual: true },
  addendum: { name: 'Addendum', paper: 'upright', pagesEach: 3, usual: true },
  schedule: { name: 'Door schedule', paper: 'schedule', pagesEach: 0.07, weight: 2.5, usual: true },
  sets: { name: 'Hardware sets', paper: 'upright', pagesEach: 0.7, usual: true },
  quantities: { name: 'Quantities, bidder’s copy', paper: 'upright', pagesEach: 0.03, usual: true },
  bill: { name: 'Pricing', paper: 'upright', pagesEach: 0.03, usual: false },
  sequence: { name: 'Sequence of operation', paper: 'upright', pagesEach: 0.7, usual: false },
  openings: { name: 'Opening sheets', paper: 'upright', pagesEach: 1.2, byOpening: true, usual: false },
  diagrams: {
    name: 'One-line diagrams',
    paper: 'upright',
    pagesEach: 0.12,
    weight: 4,
    byOpening: true,
    usual: false,
  },
  power: { name: 'Power and cable', paper: 'landscape', pagesEach: 0.7, weight: 3, usual: true },
  tests: { name: 'Acceptance test sheets', paper: 'upright', pagesEach: 1.05, byOpening: true, usual: false },
  register: { name: 'Review register', paper: 'landscape', pagesEach: 0.48, weight: 1.5, usual: true },
  packet: { name: 'Packet for the authority', paper: 'upright', pagesEach: 1.1, usual: false },
  findings: { name: 'Building findings', paper: 'landscape', pagesEach: 0.15, usual: true },
  loads: { name: 'Loads and exits', paper: 'landscape', pagesEach: 0.15, usual: false },
  basis: { name: 'Another basis, side by side', paper: 'landscape', pagesEach: 5, usual: false },
  plans: { name: 'Floor plans', paper: 'landscape', pagesEach: 3, usual: 'withPlans' },
  legend: { name: 'Legend', paper: 'upright', pagesEach: 1, usual: true },
} as const satisfies Record<string, SheetKind>;

export type SheetId = keyof typeof sheets;

/** What can be printed, in the order in which it is bound. */
export const sheetKinds: Readonly<Record<SheetId, SheetKind>> = sheets;
export const sheetIds = Object.keys(sheets) as readonly SheetId[];

/** Ticked when the page is opened. */
export function usualSheets(hasPlans: boolean): ReadonlySet<SheetId> {
  return new Set(
    sheetIds.filter((id) => {
      const { usual } = sheetKinds[id];
      return usual === 'withPlans' ? hasPlans : usual;
    }),
  );
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

import type { Decision } from '../../domain/decide/decision.ts';
import { knownValues } from '../../domain/decide/factView.ts';
import { oneLineOf } from '../../domain/schedules/oneLine.ts';
import { elevation } from './elevation.ts';
import { oneLine } from './one-line.ts';
import { type DrawingSize, drawingSizes, ratioOf } from './paper.ts';
import { planView } from './plan.ts';
import { type Drawing, wordsAreInside } from './scene.ts';

/** Where a drawing is set: beside the survey, in the walk; at the head of an opening's sheet; with those of its kind. */
export type Place = 'desk' | 'walk' | 'sheet' | 'crowdedSheet' | 'ownSheet';

/**
 * One kind of drawing. Screens and sheets draw whatever stands in the list of their subject and know none of them by
 * name: a wiring diagram, a riser or a floor plan is a file that makes a `Drawing`, and an entry.
 */
export interface DrawingKind<Subject> {
  readonly name: string;
  /** What it shows, and what it needs to do so; one sentence each, for the legend. */
  readonly shows: string;
  readonly needs: string;
  /** How large it is where it is drawn, the first size at which all words are on it; without one it is not drawn. */
  readonly sizes: Readonly<Partial<Record<Place, readonly DrawingSize[]>>>;
  /** Undefined where the subject has nothing of the kind. */
  readonly make: (subject: Subject, size: DrawingSize) => Drawing | undefined;
}

/** Lettering of a drawing among the small print of a sheet. */
const besideText = 0.6;
/** Half a page wide, its key beside it. */
const half = (height: number): DrawingSize => ({ width: 2.7, height, labels: 'numbers' });
const lowHalf = [half(2.6), half(2.8), half(3.1), half(3.5), half(3.9)];
const tallHalf = [half(3.5), half(3.9)];

/** What is drawn of one opening, in order. */
export const openingDrawings: readonly DrawingKind<Decision>[] = [
  {
    name: 'Elevation, egress side',
    shows: 'The opening as a person leaving sees it, with its hardware and the device chosen.',
    needs: 'Door type, sizes and hand; what is not surveyed is drawn broken, at a usual size.',
    sizes: {
      desk: [drawingSizes.sheet],
      walk: [drawingSizes.phone],
      sheet: tallHalf,
      crowdedSheet: lowHalf,
    },
    make: (decision, size) => elevation(knownValues(decision.slots), decision.chosen?.candidate, size),
  },
  {
    name: 'Plan',
    shows: 'The opening from above: which way it swings, and what is on which side.',
    needs: 'Door type, width and hand; what is not surveyed is drawn broken, at a usual size.',
    sizes: { desk: [drawingSizes.sheetPlan], sheet: tallHalf, crowdedSheet: lowHalf },
    make: (decision, size) => planView(knownValues(decision.slots), decision.chosen?.candidate, size),
  },
  {
    name: 'One-line diagram',
    shows: 'The lock circuit from its supply to the lock, and what reports to the controller.',
    needs: 'A chosen arrangement that is wired; without one nothing is drawn.',
    sizes: {
      desk: [{ width: 5, height: 6, labels: 'words' }],
      ownSheet: [{ width: 3.55, height: 3, labels: 'words' }],
    },
    make: (decision, { width }) => {
      const found = oneLineOf(decision);
      return found && oneLine(found, width, width < 5 ? besideText : 1);
    },
  },
];

/** Side by side on paper: a door that is larger in one of two drawings is measured wrong. */
const atOneScale: readonly Place[] = ['sheet', 'crowdedSheet'];

/** The drawings of a subject at a place, those that have something to show. */
export function drawingsAt<Subject>(
  kinds: readonly DrawingKind<Subject>[],
  subject: Subject,
  place: Place,
): readonly Drawing[] {
  let ratio: number | undefined;
  for (;;) {
    const least = ratio;
    const drawn = kinds.flatMap((kind) => drawnAt(kind, subject, place, least) ?? []);
    const ratios = drawn.flatMap(({ scale }) => ratioOf(scale) ?? []);
    const smallest = Math.max(0, ...ratios);
    if (!atOneScale.includes(place) || ratios.every((one) => one === smallest)) return drawn;
    // What is drawn smaller may need more room for its words, and so come out smaller still.
    ratio = smallest;
  }
}

function drawnAt<Subject>(
  { sizes, make }: DrawingKind<Subject>,
  subject: Subject,
  place: Place,
  ratio?: number,
): Drawing | undefined {
  let drawing: Drawing | undefined;
  for (const size of sizes[place] ?? []) {
    drawing = make(subject, ratio === undefined ? size : { ...size, ratio });
    if (!drawing || wordsAreInside(drawing)) break;
  }
  return drawing;
}

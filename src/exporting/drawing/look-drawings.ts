import type { DrawingOfLook } from '../../domain/survey/lookDrawings.ts';
import { dashed, type FaceSymbol, heavy, line, ring, solid, thin } from './symbol.ts';

const drawn = (word: string, meaning: string, ...strokes: FaceSymbol['strokes']): FaceSymbol => ({
  word,
  meaning,
  strokes,
});

/** The edge of a leaf, seen from its side, and a tape along it. */
const edge = [heavy('M9 1V23'), heavy('M17 1V23')];
const leaf = line('M5 1H19V23H5Z');

/** What to look at, a drawing for each thing that is told apart; words stand beside it, never in it. */
export const lookDrawings: Readonly<Record<DrawingOfLook, readonly FaceSymbol[]>> = {
  edges: [
    drawn(
      'Cylindrical',
      'Faceplate about 2-1/4 in tall',
      ...edge,
      line('M10.5 9H15.5V15H10.5Z'),
      solid('M12 11H14V13H12Z'),
      thin('M3 9H6M3 15H6M4.5 9V15'),
    ),
    drawn(
      'Mortise',
      'Faceplate about 8 in tall',
      ...edge,
      line('M10.5 4H15.5V20H10.5Z'),
      solid('M12 8H14V11H12Z'),
      line('M12 14H14V17H12Z'),
      thin('M3 4H6M3 20H6M4.5 4V20'),
    ),
  ],
  label: [
    drawn(
      'Hinge edge of the leaf',
      'Between the top hinge and the middle one',
      ...edge,
      line('M9 3H6V6H9M9 18H6V21H9'),
      solid('M11 8H15V11H11Z'),
    ),
    drawn(
      'Hinge jamb of the frame',
      'At the same height as the label of the leaf',
      heavy('M4 23V2H20V23'),
      line('M7 23V5H17V23'),
      solid('M4.5 9H6.5V12H4.5Z'),
    ),
  ],
  strike: [
    drawn(
      '4-7/8 × 1-1/4 in',
      'Height and width of the cutout in the frame',
      heavy('M4 1V23'),
      line('M8 4H14V20H8Z'),
      thin('M17 4H20M17 20H20M18.5 4V20M8 22H14'),
    ),
    drawn(
      '2-3/4 × 1-1/8 in',
      'The short cutout of light locks',
      heavy('M4 1V23'),
      line('M8 8H13V16H8Z'),
      thin('M17 8H20M17 16H20M18.5 8V16M8 22H13'),
    ),
  ],
  rods: [
    drawn(
      'Rods at top and bottom',
      'A bar with a rod up and a rod down',
      leaf,
      heavy('M6 12H18'),
      line('M12 2V11M12 13V22'),
    ),
    drawn('Top rod only', 'No rod below the bar', leaf, heavy('M6 12H18'), line('M12 2V11')),
  ],
  tap: [
    drawn(
      'Hollow',
      'Tap the frame beside the strike: it rings',
      line('M3 2H9V22H3'),
      line('M14 8A6 6 0 0 1 14 16M17 5A10 10 0 0 1 17 19'),
    ),
    drawn(
      'Full',
      'It sounds dead: grout stands behind the steel',
      line('M3 2H9V22H3'),
      solid('M3 4H8V20H3Z'),
      dashed('M14 10V14'),
    ),
  ],
  stile: [
    drawn(
      'Stile by tape',
      'Narrow about 2 in, medium about 3-1/2 in, wide about 5 in',
      leaf,
      line('M8 4H16V20H8Z'),
      thin('M5 12H8M16 12H19'),
      solid(ring(6.5, 12, 0.8)),
    ),
  ],
};

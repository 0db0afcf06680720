import type { Look } from './look.ts';

const sound = { frameGrouted: false, latchPreload: false } as const;

/** Beyond the leaf: frame, head, wall and room. */
export const looksAround: readonly Look[] = [
  {
    id: 'strike',
    station: 'frame',
    ask: 'What is at the strike?',
    help: 'Measure the cutout and the latch. Tap the frame beside the strike: full sounds dead.',
    drawing: 'strike',
    presets: [
      {
        label: '4-7/8 cutout, latch 1/2 in, sounds hollow, nothing pushes on the latch',
        facts: { strikePrep: 'ansi478', latchProjectionIn: 0.5, ...sound },
      },
      {
        label: '4-7/8 cutout, latch 3/4 in, sounds hollow, nothing pushes on the latch',
        facts: { strikePrep: 'ansi478', latchProjectionIn: 0.75, ...sound },
      },
      {
        label: '2-3/4 cutout, latch 1/2 in, sounds hollow, nothing pushes on the latch',
        facts: { strikePrep: 'light234', latchProjectionIn: 0.5, ...sound },
      },
      {
        label: '4-7/8 cutout, latch 1/2 in, nothing pushes on the latch; full or hollow cannot be told',
        facts: { strikePrep: 'ansi478', latchProjectionIn: 0.5, latchPreload: false },
      },
      {
        label: 'No cutout, sounds hollow, nothing pushes on the latch',
        facts: { strikePrep: 'none', ...sound },
      },
      {
        label: '4-7/8 cutout, latch 1/2 in, sounds full, nothing pushes on the latch',
        facts: { strikePrep: 'ansi478', latchProjectionIn: 0.5, frameGrouted: true, latchPreload: false },
      },
    ],
  },
  {
    id: 'head',
    station: 'head',
    ask: 'What is at the head?',
    presets: [
      {
        label: 'Closer, no operator, not held open',
        facts: { closing: 'selfClosing', operator: 'none', holdOpen: 'none' },
      },
      {
        label: 'Nothing: no closer, no operator, not held open',
        facts: { closing: 'none', operator: 'none', holdOpen: 'none' },
      },
      {
        label: 'Closer, held open and let go by smoke detection',
        facts: { closing: 'automaticClosing', operator: 'none', holdOpen: 'detectorReleased' },
      },
      {
        label: 'Low-energy operator, not held open',
        facts: { closing: 'selfClosing', operator: 'lowEnergy', holdOpen: 'none' },
      },
    ],
  },
  {
    id: 'wall',
    station: 'wall',
    ask: 'Which wall is it in?',
    help: 'Nobody sees a rating: take it from the plans, or answer what the wall separates.',
    presets: [
      {
        label: 'Ordinary inside wall, gypsum, not rated',
        facts: { wallKind: 'none', wallRatingMin: 0, wallConstruction: 'gypsum', exterior: false },
      },
      {
        label: 'Ordinary inside wall, masonry, not rated',
        facts: { wallKind: 'none', wallRatingMin: 0, wallConstruction: 'masonry', exterior: false },
      },
      {
        label: 'Ordinary inside wall of glass, not rated',
        facts: { wallKind: 'none', wallRatingMin: 0, wallConstruction: 'glass', exterior: false },
      },
      {
        label: 'Corridor wall, gypsum, 1/2 h by the plans',
        facts: { wallKind: 'corridor', wallRatingMin: 30, wallConstruction: 'gypsum', exterior: false },
      },
      {
        label: 'Corridor wall, gypsum, 1 h by the plans',
        facts: { wallKind: 'corridor', wallRatingMin: 60, wallConstruction: 'gypsum', exterior: false },
      },
      {
        label: 'Ordinary inside wall, gypsum; its rating is not on hand',
        facts: { wallKind: 'none', wallConstruction: 'gypsum', exterior: false },
      },
      {
        label: 'Corridor wall, gypsum; its rating is not on hand',
        facts: { wallKind: 'corridor', wallConstruction: 'gypsum', exterior: false },
      },
      {
        label: 'Exterior wall, not rated',
        facts: { wallKind: 'exterior', wallRatingMin: 0, exterior: true },
      },
    ],
  },
  {
    id: 'room',
    station: 'room',
    ask: 'What is behind the door?',
    presets: (
      [
        ['Office or ordinary room', 'office'],
        ['Storage room', 'storage'],
        ['Server or data room', 'serverRoom'],
        ['Equipment room', 'equipment'],
        ['Closet a person can enter', 'closet'],
        ['Meeting or assembly room', 'conference'],
      ] as const
    ).map(([label, roomUse]) => ({
      label: `${label}, no public entrance`,
      facts: { roomUse, egressRole: 'exitAccess', publicEntrance: false },
    })),
  },
];

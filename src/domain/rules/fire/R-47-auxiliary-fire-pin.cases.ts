import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

const pair = { ...rated, doorType: 'pair', latch: 'verticalRods', lessBottomRod: true } as const;

export const R47Cases = cases(
  ['rated pair without bottom rods', pair, 'yes', { does: ['auxiliaryFirePin'] }],
  ['rated pair with bottom rods', { ...pair, lessBottomRod: false }, 'no'],
  ['unrated pair without bottom rods', { ...pair, ...unrated }, 'no'],
  ['single leaf', { ...pair, doorType: 'single' }, 'no'],
  ['rods not looked at', { ...rated, doorType: 'pair', latch: 'verticalRods' }, 'unknown'],
  ['one leaf on a rim latch, rods on the other', { ...pair, latch: 'rimPlusRods' }, 'yes'],
  ['no rods at all', { ...pair, latch: 'mortise' }, 'no'],
);

import { text } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** A frame that is ordered comes with what the strike needs; nobody cuts it on site. */
const isNew = is('workStatus', 'new');
const inPlace = not(isNew);

export const F01 = defineRule({
  id: 'F-01',
  title: 'The strike matches the frame preparation',
  family: 'fit',
  book: 'practice',
  cites: [text('bhma', 'A156.115', 'Hardware preparation in steel doors and frames'), text('practice', '')],
  confidence: 'practice',
  why: 'The frame preparation decides which strike goes in without cutting; a steel frame usually comes with the 4-7/8 in one.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: all(is('strikePrep', 'none'), inPlace),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The frame has no strike preparation: it must be cut for the strike.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(is('strikePrep', 'light234'), inPlace),
      of: { device: ['strikeMortise'] },
      says: 'The 2-3/4 in cutout is too short for a mortise strike: it must be enlarged to 4-7/8 × 1-1/4 in.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('strikePrep', 'light234'),
      of: { device: ['strikeCylindrical'] },
      says: 'Order the strike with the 2-3/4 × 1-1/8 in face; the 4-7/8 in face does not go in.',
    },
    {
      key: 'd',
      effect: 'modify',
      trade: 'locksmith',
      when: all(is('strikePrep', 'residential'), inPlace),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'A residential full-lip strike leaves no room for a strike body: the jamb must be cut.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: is('strikePrep', 'aluminium458'),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'A 4-7/8 in face leaves gaps over the 4-5/8 in deadlatch cutout: use a strike with a retrofit face for aluminum.',
    },
    {
      key: 'f',
      effect: 'finding',
      field: 'strikePrep',
      severity: 'warn',
      when: all(is('strikePrep', 'aluminium458'), not(is('frameMaterial', 'aluminium'))),
      says: 'An aluminum deadlatch cutout was surveyed in a frame that is not aluminum: measure it again.',
    },
    {
      key: 'g',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(isNew, is('strikePrep', 'none', 'residential')),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'Order the frame with the cutout that this strike needs; the frame entered has none, and a new frame is not cut on site.',
    },
    {
      key: 'h',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(isNew, is('strikePrep', 'light234')),
      of: { device: ['strikeMortise'] },
      says: 'Order the frame with the 4-7/8 × 1-1/4 in cutout; a mortise strike does not go into the 2-3/4 in one.',
    },
  ],
});

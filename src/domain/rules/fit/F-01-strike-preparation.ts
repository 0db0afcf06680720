import { text } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const cutStrikes = ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'];

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
      when: is('strikePrep', 'none'),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The frame has no strike preparation: it must be cut for the strike.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: is('strikePrep', 'light234'),
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
      when: is('strikePrep', 'residential'),
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
  ],
  cases: cases(
    ...onEach(cutStrikes, 'no cutout', { strikePrep: 'none' }, 'yes', {
      clause: 'a',
      does: 'modify locksmith',
    }),
    [
      'a rim strike sits on the face',
      { strikePrep: 'none' },
      'no',
      { clause: 'a', on: 'strikeRim/secure/free' },
    ],
    ['standard cutout', { strikePrep: 'ansi478' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ['cutout not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
    [
      'light cutout, mortise strike',
      { strikePrep: 'light234' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: 'modify locksmith' },
    ],
    [
      'light cutout, cylindrical strike',
      { strikePrep: 'light234' },
      'no',
      { clause: 'b', on: 'strikeCylindrical/secure/free' },
    ],
    [
      'standard cutout, mortise strike',
      { strikePrep: 'ansi478' },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ['not surveyed, mortise strike', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'light cutout takes a small strike',
      { strikePrep: 'light234' },
      'yes',
      { clause: 'c', on: 'strikeCylindrical/secure/free', does: 'caution' },
    ],
    [
      'light cutout, not a mortise strike',
      { strikePrep: 'light234' },
      'no',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    [
      'standard cutout, cylindrical strike',
      { strikePrep: 'ansi478' },
      'no',
      { clause: 'c', on: 'strikeCylindrical/secure/free' },
    ],
    ['not surveyed, cylindrical strike', {}, 'unknown', { clause: 'c', on: 'strikeCylindrical/secure/free' }],
    ...onEach(cutStrikes, 'residential strike', { strikePrep: 'residential' }, 'yes', {
      clause: 'd',
      does: 'modify locksmith',
    }),
    [
      'residential strike, rim strike on the face',
      { strikePrep: 'residential' },
      'no',
      { clause: 'd', on: 'strikeRim/secure/free' },
    ],
    [
      'standard cutout is no residential one',
      { strikePrep: 'ansi478' },
      'no',
      { clause: 'd', on: 'strikeMortise/secure/free' },
    ],
    ['residential or not: not surveyed', {}, 'unknown', { clause: 'd', on: 'strikeMortise/secure/free' }],
    ...onEach(cutStrikes, 'deadlatch cutout', { strikePrep: 'aluminium458' }, 'yes', {
      clause: 'e',
      does: 'caution',
    }),
    [
      'deadlatch cutout, rim strike',
      { strikePrep: 'aluminium458' },
      'no',
      { clause: 'e', on: 'strikeRim/secure/free' },
    ],
    [
      'standard cutout needs no retrofit face',
      { strikePrep: 'ansi478' },
      'no',
      { clause: 'e', on: 'strikeCylindrical/secure/free' },
    ],
    [
      'deadlatch cutout or not: not surveyed',
      {},
      'unknown',
      { clause: 'e', on: 'strikeCylindrical/secure/free' },
    ],
    [
      'deadlatch cutout in a steel frame',
      { strikePrep: 'aluminium458', frameMaterial: 'hollowMetal' },
      'yes',
      { clause: 'f', does: 'warn strikePrep' },
    ],
    [
      'deadlatch cutout in aluminum',
      { strikePrep: 'aluminium458', frameMaterial: 'aluminium' },
      'no',
      { clause: 'f' },
    ],
    [
      'standard cutout in a steel frame',
      { strikePrep: 'ansi478', frameMaterial: 'hollowMetal' },
      'no',
      { clause: 'f' },
    ],
    ['frame not surveyed', { strikePrep: 'aluminium458' }, 'unknown', { clause: 'f' }],
  ),
});

import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const T37 = defineRule({
  id: 'T-37',
  title: 'A strike needs the storeroom function',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'secondary',
  note: 'That storeroom is the usual function was read; the rest is common practice.',
  why: 'A strike controls the door only while the outside lever is locked; a lever that turns opens it without a card.',
  clauses: [
    {
      key: 'a',
      effect: 'modify',
      trade: 'locksmith',
      when: is('lockFunction', 'passage'),
      of: { family: ['strike'] },
      says: 'The outside lever is always free and defeats the strike: change the lock function first.',
    },
    {
      key: 'b',
      effect: 'require',
      items: ['storeroomLockset'],
      when: is('lockFunction', 'passage', 'classroom', 'office'),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'A lock whose outside lever is always locked.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('lockFunction', 'classroom', 'office'),
      of: { family: ['strike'] },
      says: 'The outside lever can be left unlocked by key or button, and then the strike secures nothing: leave it locked permanently, or change it.',
    },
  ],
});

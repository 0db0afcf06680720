import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

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
  cases: cases(
    ...onEach(
      ['strikeMortise/secure/free', 'strikeRim/secure/free'],
      'passage lever',
      { lockFunction: 'passage' },
      'yes',
      { clause: 'a', does: 'modify locksmith' },
    ),
    ['storeroom lock', { lockFunction: 'storeroom' }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ['function not surveyed', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
    [
      'an electrified lock brings its own lever',
      { lockFunction: 'passage' },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    ...onEach(
      ['strikeMortise/secure/free', 'strikeCylindrical/secure/free'],
      'passage lock',
      { lockFunction: 'passage' },
      'yes',
      'b',
    ),
    [
      'classroom lock',
      { lockFunction: 'classroom' },
      'yes',
      { clause: 'b', on: 'strikeMortise/secure/free', does: ['storeroomLockset'] },
    ],
    ['office lock', { lockFunction: 'office' }, 'yes', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'storeroom lock stays',
      { lockFunction: 'storeroom' },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ['not surveyed', {}, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'an exit device has trim, not a lockset',
      { lockFunction: 'passage' },
      'no',
      { clause: 'b', on: 'strikeRim/secure/free' },
    ],
    ...onEach(
      ['strikeMortise/secure/free', 'strikeRim/safe/free'],
      'classroom function',
      { lockFunction: 'classroom' },
      'yes',
      'c',
    ),
    [
      'office function',
      { lockFunction: 'office' },
      'yes',
      { clause: 'c', on: 'strikeMortise/secure/free', does: 'caution' },
    ],
    [
      'storeroom function',
      { lockFunction: 'storeroom' },
      'no',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    ['function unknown', {}, 'unknown', { clause: 'c', on: 'strikeMortise/secure/free' }],
    [
      'a magnet cares for no lever',
      { lockFunction: 'classroom' },
      'no',
      { clause: 'c', on: 'magnet/safe/sensor' },
    ],
  ),
});

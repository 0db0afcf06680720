import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

export const R36Cases = cases(
  ['rated, nothing closes it', { ...rated, closing: 'none' }, 'yes', { clause: 'a', does: 'warn closing' }],
  ['rated, self-closing', { ...rated, closing: 'selfClosing' }, 'no', { clause: 'a' }],
  [
    'rated, held open and closed by detection',
    { ...rated, closing: 'automaticClosing' },
    'no',
    { clause: 'a' },
  ],
  ['unrated, nothing closes it', { ...unrated, closing: 'none' }, 'no', { clause: 'a' }],
  ['closing not surveyed', rated, 'unknown', { clause: 'a' }],
  ['rated, nothing closes it', { ...rated, closing: 'none' }, 'yes', { clause: 'b', does: ['closer'] }],
  ['rated, self-closing', { ...rated, closing: 'selfClosing' }, 'no', { clause: 'b' }],
  ['unrated, nothing closes it', { ...unrated, closing: 'none' }, 'no', { clause: 'b' }],
  ['rating not known', { closing: 'none' }, 'unknown', { clause: 'b' }],
);

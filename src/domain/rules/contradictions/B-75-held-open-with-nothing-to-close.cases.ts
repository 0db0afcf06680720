import { cases } from '../rule.ts';

export const B75Cases = cases(
  ['no closer', { closing: 'none', holdOpen: 'detectorReleased' }, 'yes', { does: 'warn closing' }],
  ['no closer', { closing: 'none', holdOpen: 'heatOnly' }, 'yes'],
  ['closer', { closing: 'selfClosing', holdOpen: 'detectorReleased' }, 'no'],
  ['not held', { closing: 'none', holdOpen: 'none' }, 'no'],
  ['hold-open not seen', { closing: 'none' }, 'unknown'],
);

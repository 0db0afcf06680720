import { cases } from '../rule.ts';

export const B76Cases = cases(
  ['nothing holds it', { closing: 'automaticClosing', holdOpen: 'none' }, 'yes', { does: 'warn holdOpen' }],
  ['held', { closing: 'automaticClosing', holdOpen: 'detectorReleased' }, 'no'],
  ['self-closing', { closing: 'selfClosing', holdOpen: 'none' }, 'no'],
  ['hold-open not seen', { closing: 'automaticClosing' }, 'unknown'],
);

import { cases } from '../rule.ts';

export const B29Cases = cases(
  [
    'bar on no swinging leaf',
    { doorType: 'overhead', panicPresent: true },
    'yes',
    { does: 'refuse panicPresent' },
  ],
  ['bar on no swinging leaf', { doorType: 'grille', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'revolving', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'turnstile', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'turnstileFull', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'turnstileSecurity', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'gateSlide', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'slidingManual', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'slidingAutomatic', panicPresent: true }, 'yes'],
  ['bar on no swinging leaf', { doorType: 'folding', panicPresent: true }, 'yes'],
  ['no bar', { doorType: 'overhead', panicPresent: false }, 'no'],
  ['hinged door', { doorType: 'single', panicPresent: true }, 'no'],
  ['bar not seen', { doorType: 'overhead' }, 'unknown'],
);

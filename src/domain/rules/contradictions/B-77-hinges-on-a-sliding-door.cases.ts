import { cases } from '../rule.ts';

export const B77Cases = cases(
  [
    'hinges on a slider',
    { doorType: 'slidingManual', hinges: 'butt' },
    'yes',
    { clause: 'a', does: 'warn hinges' },
  ],
  ['hinges on a slider', { doorType: 'slidingAutomatic', hinges: 'butt' }, 'yes', { clause: 'a' }],
  ['hinges on a slider', { doorType: 'overhead', hinges: 'butt' }, 'yes', { clause: 'a' }],
  ['hinges on a slider', { doorType: 'grille', hinges: 'butt' }, 'yes', { clause: 'a' }],
  ['hinges on a slider', { doorType: 'gateSlide', hinges: 'butt' }, 'yes', { clause: 'a' }],
  ['hinges on a slider', { doorType: 'slidingManual', hinges: 'continuous' }, 'yes', { clause: 'a' }],
  ['hinges on a slider', { doorType: 'slidingManual', hinges: 'swingClear' }, 'yes', { clause: 'a' }],
  ['track', { doorType: 'slidingManual', hinges: 'track' }, 'no', { clause: 'a' }],
  ['breakaway on pivots', { doorType: 'slidingAutomatic', hinges: 'pivot' }, 'no', { clause: 'a' }],
  ['swinging', { doorType: 'single', hinges: 'butt' }, 'no', { clause: 'a' }],
  ['hanging not seen', { doorType: 'slidingManual' }, 'unknown', { clause: 'a' }],
  [
    'track on a swinging door',
    { doorType: 'single', hinges: 'track' },
    'yes',
    { clause: 'b', does: 'warn hinges' },
  ],
  ['hinges', { doorType: 'single', hinges: 'butt' }, 'no', { clause: 'b' }],
  ['slider', { doorType: 'slidingManual', hinges: 'track' }, 'no', { clause: 'b' }],
  ['hanging not seen', { doorType: 'single' }, 'unknown', { clause: 'b' }],
);

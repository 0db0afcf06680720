import { cases } from '../rule.ts';

export const T36Cases = cases(
  [
    '34 in leaf',
    { doorType: 'single', hinges: 'butt', egressRole: 'exitAccess', leafWidthIn: 34 },
    'yes',
    { does: 'warn leafWidthIn' },
  ],
  [
    'just under 34-3/4 in',
    { doorType: 'single', hinges: 'butt', egressRole: 'exitAccess', leafWidthIn: 34.74 },
    'yes',
  ],
  ['34-3/4 in', { doorType: 'single', hinges: 'butt', egressRole: 'exitAccess', leafWidthIn: 34.75 }, 'no'],
  [
    'accessible route without egress',
    {
      doorType: 'single',
      hinges: 'butt',
      egressRole: 'noOccupiedSpace',
      accessibleRoute: true,
      leafWidthIn: 34,
    },
    'yes',
  ],
  [
    'neither egress nor accessible',
    {
      doorType: 'single',
      hinges: 'butt',
      egressRole: 'noOccupiedSpace',
      accessibleRoute: false,
      leafWidthIn: 34,
    },
    'no',
  ],
  [
    'swing-clear hinges',
    { doorType: 'single', hinges: 'swingClear', egressRole: 'exitAccess', leafWidthIn: 34 },
    'no',
  ],
  [
    'pair counts otherwise',
    { doorType: 'pair', hinges: 'butt', egressRole: 'exitAccess', leafWidthIn: 34 },
    'no',
  ],
  [
    'clear width was measured',
    { doorType: 'single', hinges: 'butt', egressRole: 'exitAccess', leafWidthIn: 34, clearWidthIn: 32 },
    'no',
  ],
  ['width not measured', { doorType: 'single', hinges: 'butt', egressRole: 'exitAccess' }, 'unknown'],
);

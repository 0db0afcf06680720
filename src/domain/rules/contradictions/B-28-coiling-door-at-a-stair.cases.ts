import { cases } from '../rule.ts';

export const B28Cases = cases(
  ['in a stair', { doorType: 'overhead', egressRole: 'stairEntry' }, 'yes', { does: 'refuse doorType' }],
  ['in a stair', { doorType: 'grille', egressRole: 'stairEntry' }, 'yes'],
  ['in a stair', { doorType: 'turnstile', egressRole: 'stairEntry' }, 'yes'],
  ['in a stair', { doorType: 'turnstileFull', egressRole: 'stairEntry' }, 'yes'],
  ['in a stair', { doorType: 'turnstileSecurity', egressRole: 'stairEntry' }, 'yes'],
  ['in a stair', { doorType: 'revolving', egressRole: 'stairEntry' }, 'yes'],
  ['out of a stair or at a horizontal exit', { doorType: 'overhead', egressRole: 'stairDischarge' }, 'yes'],
  ['out of a stair or at a horizontal exit', { doorType: 'overhead', egressRole: 'horizontalExit' }, 'yes'],
  ['shop front', { doorType: 'overhead', egressRole: 'exteriorExit' }, 'no'],
  ['hinged stair door', { doorType: 'single', egressRole: 'stairEntry' }, 'no'],
  ['role not known', { doorType: 'overhead' }, 'unknown'],
);

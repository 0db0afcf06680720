import { cases } from '../rule.ts';

const on = 'magnet/safe/controlled';

export const N91Cases = cases(
  ['owner asks', { wishControlledEgress: true, egressRole: 'exitAccess' }, 'no', { on }],
  [
    'owner does not ask',
    { wishControlledEgress: false, egressRole: 'exitAccess' },
    'yes',
    { on, does: 'prohibit' },
  ],
  ['wish not recorded', { egressRole: 'exitAccess' }, 'yes', { on }],
  ['nothing known', {}, 'yes', { on }],
  ['asked at a cabinet', { wishControlledEgress: true, egressRole: 'noOccupiedSpace' }, 'yes', { on }],
  ['asked, role not known', { wishControlledEgress: true }, 'unknown', { on }],
  [
    'a sensor magnet is not meant',
    { wishControlledEgress: false, egressRole: 'exitAccess' },
    'no',
    { on: 'magnet/safe/sensor' },
  ],
);

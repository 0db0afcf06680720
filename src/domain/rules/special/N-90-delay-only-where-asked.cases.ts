import { cases } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const N90Cases = cases(
  ['owner asks', { wishDelayedEgress: true, egressRole: 'exteriorExit' }, 'no', { on }],
  [
    'owner does not ask',
    { wishDelayedEgress: false, egressRole: 'exteriorExit' },
    'yes',
    { on, does: 'prohibit' },
  ],
  ['wish not recorded', { egressRole: 'exteriorExit' }, 'yes', { on }],
  ['nothing known', {}, 'yes', { on }],
  ['asked at a cabinet', { wishDelayedEgress: true, egressRole: 'noOccupiedSpace' }, 'yes', { on }],
  ['asked, role not known', { wishDelayedEgress: true }, 'unknown', { on }],
  [
    'a free bar is not meant',
    { wishDelayedEgress: false, egressRole: 'exteriorExit' },
    'no',
    { on: 'exitTrim/secure/free' },
  ],
);

import { text } from '../../codes/sections.ts';
import { all, any, isKnown, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'delayedExitDevice/safe/delayed';

export const N90 = defineRule({
  id: 'N-90',
  title: 'Delayed egress only where the owner asks',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A delay is never added to an egress door unless someone wants it and answers for it.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(not(all(isKnown('wishDelayedEgress'), yes('wishDelayedEgress'))), no('isEgress')),
      of: { release: ['delayed'] },
      says: 'No delay was requested here, or no one leaves this way, so none is offered.',
    },
  ],
  cases: cases(
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
  ),
});

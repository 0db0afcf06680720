import { text } from '../../codes/sections.ts';
import { all, any, isKnown, no, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'magnet/safe/controlled';

export const N91 = defineRule({
  id: 'N-91',
  title: 'Controlled egress only where the owner asks',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'No one is kept in by default.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(not(all(isKnown('wishControlledEgress'), yes('wishControlledEgress'))), no('isEgress')),
      of: { release: ['controlled'] },
      says: 'Keeping people in until staff open was not requested here, or no one leaves this way, so it is not offered.',
    },
  ],
  cases: cases(
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
  ),
});

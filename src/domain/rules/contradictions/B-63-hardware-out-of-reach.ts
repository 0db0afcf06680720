import { text, under } from '../../codes/sections.ts';
import { all, any, isKnown, not, over, under as below, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const poolGate = all(isKnown('poolBarrierGate'), yes('poolBarrierGate'));

export const B63 = defineRule({
  id: 'B-63',
  title: 'Egress hardware at an odd height',
  family: 'contradictions',
  book: 'ada',
  cites: [text('ada', '404.2.7', 'Door hardware'), under('hardwareHeightIbc')],
  confidence: 'read',
  note: 'The 54 in of pool gates is from general knowledge.',
  why: 'Hardware is in reach between 34 and 48 in, standing or seated.',
  clauses: [
    {
      effect: 'finding',
      field: 'egressHardwareHeightIn',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        any(
          below('egressHardwareHeightIn', 'hardwareLowIn'),
          all(over('egressHardwareHeightIn', 'hardwareHighIn'), not(poolGate)),
          over('egressHardwareHeightIn', 'poolLatchHighIn'),
        ),
      ),
      says: 'The hardware is entered at {egressHardwareHeightIn} above the floor, outside the 34 to 48 in that people need; measure its working part again.',
    },
  ],
});

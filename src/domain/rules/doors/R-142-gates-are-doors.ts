import { under } from '../../codes/sections.ts';
import { all, any, atMost, is, no, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const gate = all(
  yes('isEgress'),
  any(is('doorType', 'gateSwing', 'gateSlide'), is('egressRole', 'dischargeGate')),
);

export const R142 = defineRule({
  id: 'R-142',
  title: 'A gate in a means of egress follows the door rules',
  family: 'doors',
  book: 'ibc',
  cites: [under('gates'), under('doorSwing')],
  confidence: 'read',
  note: 'Read in a city text; the pool latch height and the refusal of sliding gates are from general knowledge, the refusal on the safe side.',
  why: 'People who have reached the open air still have to get through the fence.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: gate,
      says: 'A reviewer confirms the gate: one motion, hardware 34 to 48 in high, push bar where the load served needs one, no chain or padlock.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(
        yes('isEgress'),
        is('doorType', 'gateSlide'),
        not(is('occupancyGroup', 'A-5')),
        not(all(no('groupH'), atMost('occupantLoad', 'otherDoorLoad'))),
      ),
      says: 'A sliding gate may not serve as egress here; provide a side-hinged gate beside it.',
    },
    {
      key: 'c',
      effect: 'permit',
      when: all(gate, is('occupancyGroup', 'A-5'), yes('gateSupervised'), yes('safeDispersalArea')),
      says: 'A stadium gate under constant supervision, with a dispersal area of 3 ft² per person 50 ft away, needs no panic hardware.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(
        yes('poolBarrierGate'),
        over('egressHardwareHeightIn', 'hardwareHighIn'),
        atMost('egressHardwareHeightIn', 'poolLatchHighIn'),
      ),
      says: 'The latch at {egressHardwareHeightIn} is too high for a door and passes only because this gate keeps children from a pool; confirm it locally.',
    },
  ],
});

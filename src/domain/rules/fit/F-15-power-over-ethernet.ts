import { text } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const F15 = defineRule({
  id: 'F-15',
  title: 'Locks powered over Ethernet',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', 'IEEE 802.3af/at/bt', 'Power at the device')],
  confidence: 'inferred',
  why: 'A port gives 12.95 to 71.3 W at the device, and the controller takes its share first.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('lockPowerSource', 'poe'),
      of: { device: ['latchRetractionSolenoid'] },
      says: 'A solenoid retraction draws 12 to 16 A when it pulls, far more than any network port gives.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: is('lockPowerSource', 'poe'),
      of: { family: ['magnet', 'bolt', 'delayed'] },
      says: 'After the controller a standard port leaves about 3 to 7 W, too little for a magnet: add up the port’s budget, and ask what backs up the switch in an outage.',
    },
  ],
});

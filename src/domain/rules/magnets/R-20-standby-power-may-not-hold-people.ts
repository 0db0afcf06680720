import { text, under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { magnetDevices } from './magnets.ts';

export const R20 = defineRule({
  id: 'R-20',
  title: 'Standby power may not keep a magnet shut',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('hardwareRelease'),
    text('nfpa72', '21.9', 'Electrically locked doors'),
  ],
  confidence: 'secondary',
  note: 'Magnets exist only fail safe; a bolt that fails secure is refused by R-25. The battery rule was read in the 2007 text of NFPA 72.',
  why: 'A battery that feeds the magnet through an outage keeps people locked in when the release it should obey is dead.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['powerLossRelease'],
      when: yes('isEgress'),
      of: { device: magnetDevices },
      says: 'The magnet lets go whenever lock power is lost, whatever the cause.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: yes('isEgress'),
      of: { device: magnetDevices },
      says: 'If a battery backs up the lock supply, fire alarm, sensor, button and bar must still cut the magnet while it runs on the battery; try this at the acceptance test.',
    },
  ],
});

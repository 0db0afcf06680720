import { under } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { magnetDevices } from './magnets.ts';

export const R15 = defineRule({
  id: 'R-15',
  title: 'A magnet comes with one full release set',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('hardwareRelease'),
    under('delayedEgress'),
    under('controlledEgress'),
    under('elevatorLobby'),
  ],
  confidence: 'secondary',
  note: 'Door-hardware release was read; the other sets are second-hand. Sets may not be mixed.',
  why: 'No lever retracts a magnet, so only a complete arrangement from the code lets people out.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { device: magnetDevices },
      says: 'A magnet holds people in until something releases it; a reviewer signs that one complete release set is provided.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['magnet'], release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut'] },
      says: 'This magnet has none of the release sets in the code: sensor, door hardware, delayed, controlled or elevator lobby.',
    },
  ],
});

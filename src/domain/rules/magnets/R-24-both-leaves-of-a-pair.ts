import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { magnetDevices } from './magnets.ts';

export const R24 = defineRule({
  id: 'R-24',
  title: 'A magnet on a pair holds and releases both leaves',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('boltLocks')],
  confidence: 'memory',
  why: 'One magnet leaves the other leaf loose, and a sensor that sees one leaf leaves people locked in at the other.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['doubleMagnet'],
      when: yes('isPair'),
      of: { device: magnetDevices },
      says: 'Each leaf needs its own magnet, or one double magnet, and one release must free both leaves at once.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(yes('isPair'), is('inactiveBolts', 'manualFlush')),
      of: { device: magnetDevices },
      says: 'Manual bolts on the other leaf stay thrown when the magnet releases; they may be used only where the rules for bolts allow them.',
    },
  ],
});

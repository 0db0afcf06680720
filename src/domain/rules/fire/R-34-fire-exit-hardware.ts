import { text, under } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R34 = defineRule({
  id: 'R-34',
  title: 'A bar on a rated door is fire exit hardware',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '6.4.4', 'Latching hardware'), under('panicHardware')],
  confidence: 'secondary',
  why: 'Panic hardware without the fire label can be dogged open or fail in fire, and then the door no longer latches.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('fireRated'), any(yes('hasExitDevice'), yes('panicWithLock'))),
      items: ['fireExitHardware'],
      of: { exitDevice: false },
      says: 'The bar on this fire door carries a fire exit hardware label and has no mechanical dogging; one that is there and so labeled may stay.',
    },
    {
      key: 'b',
      effect: 'require',
      when: yes('fireRated'),
      of: { exitDevice: true },
      items: ['fireExitHardware'],
      says: 'The exit device it works with is labeled fire exit hardware; its bar cannot be dogged down by key or wrench.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'exitHardwareFireListed',
      severity: 'warn',
      when: all(yes('fireRated'), yes('hasExitDevice'), no('exitHardwareFireListed')),
      says: 'The bar found on this fire door has no fire exit hardware label: it must be replaced.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, any, is, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R115 = defineRule({
  id: 'R-115',
  title: 'Power doors open by hand when the power is off',
  family: 'rooms',
  book: 'ibc',
  cites: [under('powerDoors'), text('bhma', 'A156.10, A156.19, A156.38', 'Power doors')],
  confidence: 'secondary',
  note: 'Low-energy and power-assist swing doors only carry a note, because they are ordinary doors once pushed by hand.',
  why: 'A door that needs a motor to open is a wall in a power outage.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic')),
      items: ['openByHand', 'acceptanceTest'],
      says: 'Without power the leaves open by hand to the full required width with at most 50 lbf to start them, and swing out from any position when pushed.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic'), no('breakaway')),
      says: 'These leaves do not swing out; a sliding door in a means of egress needs breakaway leaves.',
    },
    {
      key: 'g',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic'), no('breakaway')),
      items: ['breakawayHardware'],
      says: 'Breakaway leaves that swing out to the full required width are part of the work.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), is('doorType', 'slidingAutomatic')),
      of: { family: ['magnet', 'bolt'] },
      says: 'This lock must not hold the leaves against swinging out; ask the door manufacturer for a lock that works with the breakaway.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), any(is('doorType', 'slidingAutomatic'), is('operator', 'fullPower'))),
      says: 'A reviewer signs for the power door: opening by hand, breakaway and what the lock does to both.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'note',
      when: all(yes('isEgress'), is('operator', 'lowEnergy', 'powerAssist')),
      says: 'With its operator off this door must still open by hand like any other.',
    },
    {
      key: 'f',
      effect: 'require',
      when: all(yes('isEgress'), is('operator', 'fullPower')),
      items: ['acceptanceTest'],
      says: 'Test that without power the door opens by hand with at most 50 lbf to start it, then like an ordinary door.',
    },
  ],
});

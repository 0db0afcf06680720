import { text, under } from '../../codes/sections.ts';
import { all, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const nothingLatches = all(yes('fireRated'), is('latch', 'roller', 'pushPull'));

export const R38 = defineRule({
  id: 'R-38',
  title: 'A fire door has a positive latch',
  family: 'fire',
  book: 'nfpa80',
  cites: [under('fireDoorLatching'), text('nfpa80', '6.4.4', 'Latching hardware')],
  confidence: 'secondary',
  note: 'A push/pull leaf is treated like a roller latch. Refusing is the safe side: a lock or exit device that latches is always at hand.',
  why: 'Rollers, catches and push plates give way to the pressure of a fire; only a bolt in a strike holds.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'latch',
      severity: 'warn',
      when: nothingLatches,
      says: 'No latch engages on this fire door today: a push plate, roller or catch does not hold it against fire.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: nothingLatches,
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'], keepsLatch: false },
      says: 'It would be all that holds this fire door, and it is not a latch: choose a self-latching lock or exit device.',
    },
    {
      key: 'c',
      effect: 'require',
      when: nothingLatches,
      items: ['latchingHardware'],
      says: 'Labeled self-latching hardware must be installed; the lock chosen here may be that hardware.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(nothingLatches, is('workStatus', 'existing', 'altered')),
      says: 'A fire door in service has no latch: report it to the reviewer now, and agree on what holds it until the new latch is in.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(
        yes('fireRated'),
        not(is('latch', 'roller', 'pushPull')),
        is('workStatus', 'existing', 'altered'),
      ),
      of: { not: { family: ['none'] } },
      says: 'Positive latching: let it close from fully open and from 4 in open, ten times each; each time the closer must latch it without a push.',
    },
  ],
});

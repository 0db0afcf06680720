import { text } from '../../codes/sections.ts';
import { all, any, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const moved = is('doorType', 'slidingAutomatic', 'overhead', 'grille', 'gateSlide');
const driven = any(is('operator', 'fullPower', 'lowEnergy'), is('latch', 'operatorLock'));

export const N12 = defineRule({
  id: 'N-12',
  title: 'The operator locks what it moves',
  family: 'needs',
  book: 'practice',
  cites: [
    text('practice', '', 'Locks of operator packages'),
    text('bhma', 'A156.10', 'Power-operated doors'),
  ],
  confidence: 'practice',
  why: 'A motor that works against a lock it does not control breaks one of the two, so lock and drive come as one package.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(moved, driven),
      of: { family: ['magnet', 'bolt'] },
      says: 'An operator moves this leaf: its own package includes the lock, and the reader connects to its control; the operator would drive against a separate magnet or bolt.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: not(all(moved, driven)),
      of: { family: ['operator'] },
      says: 'No operator moves this leaf, so there is no control to connect a reader to.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(yes('isEgress'), any(not(is('doorType', 'slidingAutomatic')), no('breakaway'))),
      of: { family: ['operator'], release: ['free'] },
      says: 'People leave here, and the leaf does not swing out when it is pushed, so the locked operator would hold them.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: not(is('doorType', 'slidingAutomatic')),
      of: { family: ['operator'], release: ['free'] },
      says: 'A curtain or gate that a motor lifts or rolls is not a door that people push or walk through; it counts for no one.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: not(is('doorType', 'slidingAutomatic', 'grille')),
      of: { family: ['operator'], release: ['sensor'] },
      says: 'No sensor opens a shutter or a rolling gate fast enough for egress; a sliding door or a grille may be opened that way.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { family: ['operator'] },
      says: 'People leave through this powered door: a reviewer checks in the operator’s manual how its lock releases by push or sensor, on fire alarm and on loss of power.',
    },
  ],
});

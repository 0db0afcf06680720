import { text } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { hospitalCorridorDoor } from '../health/conditions.ts';
import { defineRule } from '../rule.ts';

export const N08 = defineRule({
  id: 'N-08',
  title: 'No lock is acceptable where nothing latches and nothing must',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A push/pull leaf may stay as it is; a leaf that has or needs a latch already has a lock.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: not(is('latch', 'pushPull', 'roller')),
      of: { family: ['none'] },
      says: 'The leaf carries a latch or lock, so it is not a push/pull opening.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: any(yes('fireRated'), hospitalCorridorDoor),
      of: { family: ['none'] },
      says: 'This door must latch by itself, and push and pull alone does not.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(yes('panicRequired'), is('latch', 'roller')),
      of: { family: ['none'] },
      says: 'A roller latch holds this door, and in this space only panic hardware may: remove the roller latch, or add a bar.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: not(is('securityNeed', 'low')),
      of: { family: ['none'] },
      says: 'Nothing locks this opening at any time, and the security need is {securityNeed}.',
    },
  ],
});

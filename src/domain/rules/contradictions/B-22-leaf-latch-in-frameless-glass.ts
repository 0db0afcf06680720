import { text } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B22 = defineRule({
  id: 'B-22',
  title: 'A lock for a solid leaf in frameless glass',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'A bored or mortise lock needs a stile, and frameless glass has none, so it is not clear how people leave.',
  clauses: [
    {
      effect: 'finding',
      field: 'latch',
      severity: 'refuse',
      when: all(
        is('leafMaterial', 'glassFrameless'),
        is(
          'latch',
          'bored',
          'mortise',
          'mortiseDeadbolt',
          'boredPlusDeadbolt',
          'deadlatch',
          'rimExit',
          'rimPlusRods',
        ),
      ),
      says: 'The leaf is frameless glass and the latch entered is {latch}, which needs a stile or a solid leaf; look at both again.',
    },
  ],
  cases: cases(
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'bored' }, 'yes', { does: 'refuse latch' }],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'mortise' }, 'yes'],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'mortiseDeadbolt' }, 'yes'],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'boredPlusDeadbolt' }, 'yes'],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'deadlatch' }, 'yes'],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'rimExit' }, 'yes'],
    ['needs a stile', { leafMaterial: 'glassFrameless', latch: 'rimPlusRods' }, 'yes'],
    ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'patch' }, 'no'],
    ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'railExit' }, 'no'],
    ['glass hardware', { leafMaterial: 'glassFrameless', latch: 'pushPull' }, 'no'],
    ['hollow metal', { leafMaterial: 'hollowMetal', latch: 'mortise' }, 'no'],
    ['latch not seen', { leafMaterial: 'glassFrameless' }, 'unknown'],
  ),
});

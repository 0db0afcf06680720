import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B25 = defineRule({
  id: 'B-25',
  title: 'A chain-link leaf in a fire or smoke wall',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('openingProtectives')],
  confidence: 'project',
  why: 'Smoke and fire pass through wire mesh.',
  clauses: [
    {
      effect: 'finding',
      field: 'leafMaterial',
      severity: 'refuse',
      when: all(
        is('leafMaterial', 'chainLink'),
        is(
          'wallKind',
          'corridor',
          'otherPartition',
          'fireBarrier',
          'exitEnclosure',
          'horizontalExit',
          'fireWall',
          'smokeBarrier',
          'smokePartition',
        ),
      ),
      says: 'A chain-link leaf cannot stand in this kind of wall, {wallKind}; check leaf and wall.',
    },
  ],
});

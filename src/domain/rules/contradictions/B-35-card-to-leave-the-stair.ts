import { text, under } from '../../codes/sections.ts';
import { all, is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B35 = defineRule({
  id: 'B-35',
  title: 'A reader on the stair side of the discharge door',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('stairDoors')],
  confidence: 'project',
  why: 'Whoever comes down the stair in a fire leaves here, with or without a card.',
  clauses: [
    {
      effect: 'finding',
      field: 'readerSides',
      severity: 'refuse',
      when: all(is('egressRole', 'stairDischarge'), is('readerSides', 'both')),
      says: 'Readers are wanted on both sides of the stair discharge door, but its stair side must always open freely; delete that reader, or enter it as one that only records.',
    },
  ],
});

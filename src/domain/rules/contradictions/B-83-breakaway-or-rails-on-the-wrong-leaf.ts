import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B83 = defineRule({
  id: 'B-83',
  title: 'Breakaway or glass rails on a door that has none',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Only sliding leaves break away, and only frameless glass has rails.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'breakaway',
      severity: 'warn',
      when: all(yes('breakaway'), yes('isSwinging')),
      says: 'A swing-out breakaway is entered on a door that swings anyway; check the door type.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'glassRails',
      severity: 'warn',
      when: all(
        is('glassRails', 'top', 'both'),
        is(
          'leafMaterial',
          'hollowMetal',
          'woodMineralCore',
          'woodSolidCore',
          'woodHollowCore',
          'gateFramed',
          'chainLink',
          'rollingSteel',
        ),
      ),
      says: 'Glass rails are entered on a leaf of {leafMaterial}; check what the leaf is made of.',
    },
  ],
});

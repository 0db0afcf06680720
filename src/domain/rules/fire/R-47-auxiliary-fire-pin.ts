import { text } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R47 = defineRule({
  id: 'R-47',
  title: 'A rod device without a bottom rod needs the fire pin',
  family: 'fire',
  book: 'ul',
  cites: [
    text('ul', '', 'Listing of vertical-rod fire exit hardware'),
    text('nfpa80', '6.4.4', 'Latching hardware'),
  ],
  confidence: 'secondary',
  why: 'Without a bottom rod the leaves separate at the bottom as they warp; a pin that projects in the heat keeps them aligned.',
  clauses: [
    {
      effect: 'require',
      when: all(
        yes('fireRated'),
        yes('isPair'),
        is('latch', 'verticalRods', 'rimPlusRods'),
        yes('lessBottomRod'),
      ),
      items: ['auxiliaryFirePin'],
      says: 'The auxiliary pin named in the listing of this rod device sits in the leaf edge; it acts at about 400 to 450 °F.',
    },
  ],
});

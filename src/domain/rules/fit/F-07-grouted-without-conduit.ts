import { text } from '../../codes/sections.ts';
import { all, any, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const wireInFrame = all(
  any(yes('frameGrouted'), is('wallConstruction', 'masonry')),
  no('frameConduit'),
  // Glass to wall or floor: there is no frame to be filled, and the wire has another way.
  not(is('frameMaterial', 'none')),
);

export const F07 = defineRule({
  id: 'F-07',
  title: 'Grouted frame without conduit',
  family: 'fit',
  book: 'practice',
  cites: [text('practice', '')],
  confidence: 'practice',
  why: 'No wire goes through grout or masonry unless conduit was set with the frame.',
  clauses: [
    {
      effect: 'require',
      items: ['frameRaceway'],
      when: wireInFrame,
      of: { wired: true },
      says: 'The frame is grouted or set in masonry and has no conduit: run the wire in surface raceway.',
    },
  ],
});

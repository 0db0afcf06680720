import { text } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** A new frame is made with strike box, mortar guards and conduit in the factory; nobody chips anything out of it. */
const standing = not(is('workStatus', 'new'));
/** Glass to wall or floor has no frame that could be filled. */
const grouted = all(yes('frameGrouted'), not(is('frameMaterial', 'none')));

export const R41 = defineRule({
  id: 'R-41',
  title: 'A grouted frame has no room for strike or wire',
  family: 'fire',
  book: 'practice',
  cites: [text('practice', '', 'Grouted frames'), text('nfpa80', '4.1.3', 'Preparation on site')],
  confidence: 'secondary',
  note: 'Mortar guards as part of the frame’s listing: secondary; the rest from general knowledge. Without power and without a cable path wired devices are refused by R-166.',
  why: 'Grout fills the pocket and the raceway; chipping it out of a labeled frame can void the label.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(standing, grouted),
      of: { family: ['strike'] },
      says: 'There is grout where the strike body goes unless mortar guards were set; a lock in the leaf avoids it.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(standing, yes('fireRated'), grouted),
      of: { family: ['strike'] },
      says: 'Installing a strike in this grouted fire frame means field work on a labeled frame: a reviewer agrees first.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'should',
      when: all(standing, yes('fireRated'), grouted, no('frameConduit')),
      of: { wired: true, not: { family: ['strike'] } },
      says: 'Cable and box must reach this grouted fire frame without conduit: have someone work out how before the job starts.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(is('workStatus', 'new'), grouted),
      of: { wired: true },
      says: 'The new frame will be grouted: order it with mortar guards at strike and hinges and with conduit to the box, because none of it can be added later.',
    },
  ],
});

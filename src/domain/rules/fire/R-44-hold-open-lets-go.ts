import { text, under } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Where the building code asks release by smoke, and heat is too late. */
const smokeWall = is(
  'wallKind',
  'corridor',
  'otherPartition',
  'exitEnclosure',
  'horizontalExit',
  'fireWall',
  'smokeBarrier',
);
const smokePlace = any(
  smokeWall,
  is('egressRole', 'crossCorridor', 'stairEntry', 'stairDischarge', 'horizontalExit'),
);

export const R44 = defineRule({
  id: 'R-44',
  title: 'A held-open fire door releases on smoke',
  family: 'fire',
  book: 'ibc',
  cites: [under('smokeActivatedClosing'), text('nfpa80', '6.4.1', 'Closing devices')],
  confidence: 'secondary',
  note: 'The list of places was read in part, in an old edition; the 10 seconds are from general knowledge.',
  why: 'Smoke passes long before a fusible link melts, and a wedge never releases.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(yes('fireRated'), is('holdOpen', 'wedge')),
      says: 'A wedge, kick-down or friction arm keeps this fire door open: remove it at once.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(
        yes('fireRated'),
        any(is('holdOpen', 'wedge', 'detectorReleased'), all(is('holdOpen', 'heatOnly'), smokePlace)),
      ),
      items: ['smokeHoldOpen'],
      says: 'If the door is to be held open, its hold-open releases on smoke detection, on fire alarm and on loss of power, and the leaf starts to close within 10 s.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'holdOpen',
      severity: 'warn',
      when: all(yes('fireRated'), is('holdOpen', 'heatOnly'), smokePlace),
      says: 'A fusible link alone is too slow at this place: here the door has to close on smoke.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('fireRated'), is('holdOpen', 'heatOnly'), not(smokePlace)),
      says: 'A hold-open worked by heat only may stay at this place if a reviewer finds that no list asks for smoke release.',
    },
  ],
});

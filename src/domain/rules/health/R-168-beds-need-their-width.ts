import { text, under as section } from '../../codes/sections.ts';
import { all, atLeast, is, isKnown, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const bedDoor = all(is('occupancyGroup', 'I-2'), yes('isEgress'), yes('bedsMoved'));
/** On butt hinges a leaf takes about 2-1/2 in of its opening with its thickness, the stop and the gap. */
const usuallyEnoughIn = 44;
const notMeasured = all(bedDoor, not(isKnown('clearWidthIn')), is('doorType', 'single', 'balanced'));

export const R168 = defineRule({
  id: 'R-168',
  title: 'Doors for bed movement need 41-1/2 in',
  family: 'health',
  book: 'ibc',
  cites: [section('doorWidth'), text('nfpa101', '18.2.3', 'Width of health-care doors')],
  confidence: 'read',
  note: 'What a leaf on butt hinges takes off its opening is common practice, no source. Read for 2018; the same figure in later editions and in NFPA 101 for new work is from general knowledge. Existing health care may be allowed less.',
  why: 'In a fire patients are rolled out in their beds, and a bed stuck in a door blocks it for everyone.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'clearWidthIn',
      severity: 'warn',
      when: all(bedDoor, under('clearWidthIn', 'bedDoorWidthIn')),
      says: 'Beds are moved through this door and its clear width is {clearWidthIn}: 41-1/2 in is the minimum for new work; hardware that projects into the opening counts against it.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'leafWidthIn',
      severity: 'warn',
      when: all(notMeasured, under('leafWidthIn', 'bedDoorWidthIn')),
      says: 'Beds are moved through this door and its leaf is only {leafWidthIn} wide: it cannot leave the 41-1/2 in clear that new work requires. Measure the clear width.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(notMeasured, atLeast('leafWidthIn', 'bedDoorWidthIn'), under('leafWidthIn', usuallyEnoughIn)),
      says: 'Beds are moved through this door: measure its clear width. New work requires 41-1/2 in, and a leaf of {leafWidthIn} leaves that much only on swing-clear hinges or pivots.',
    },
  ],
});

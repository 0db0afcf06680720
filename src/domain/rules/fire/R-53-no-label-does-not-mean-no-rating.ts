import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, is, isKnown, not, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** A new opening has no label yet: it is ordered with the door. */
const inPlace = is('workStatus', 'existing', 'altered');
const unread = is('fireLabel', 'illegible', 'removed', 'none');
const labelMissing = all(yes('fireRated'), unread, inPlace);
const saidUnrated = all(
  atMost('fireRatingMin', 0),
  over('wallRatingMin', 0),
  not(is('wallKind', 'none', 'smokePartition')),
);
/** Walls that ask for a fire door unless somebody shows a rating of zero. */
const askingWall = is(
  'wallKind',
  'corridor',
  'otherPartition',
  'fireBarrier',
  'exitEnclosure',
  'horizontalExit',
  'fireWall',
  'smokeBarrier',
);
const wallShownUnrated = all(isKnown('wallRatingMin'), atMost('wallRatingMin', 0));
/**
 * Nobody told the minutes, and no label tells them: it counts as a fire door because a label is or was on it, or
 * because the wall asks for one. What speaks here because a fact is missing ends when the rating is answered.
 */
const takenAsRated = all(
  not(isKnown('fireRatingMin')),
  inPlace,
  any(
    is('fireLabel', 'illegible', 'removed'),
    all(is('fireLabel', 'none'), askingWall, not(wallShownUnrated)),
  ),
);
const toBeLabeled = any(labelMissing, takenAsRated);

export const R53 = defineRule({
  id: 'R-53',
  title: 'A missing label does not make a door in a rated wall ordinary',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '5.1', 'Inspection of labels'), under('openingProtectives')],
  confidence: 'secondary',
  note: 'Rated exterior walls count too, though far from a lot line their openings may be free of rating.',
  why: 'Labels get painted over or fall off; the wall still requires a fire door.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'fireLabel',
      severity: 'warn',
      when: toBeLabeled,
      says: 'No legible fire label where one belongs: it is treated as a fire door, and the label or its record must be found.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: saidUnrated,
      says: 'The door is entered as unrated but stands in a wall rated {wallRatingMin}: it is treated as a fire door until someone shows otherwise.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: any(toBeLabeled, saidUnrated),
      says: 'Wall and label do not agree here: a reviewer settles the rating of this door.',
    },
    {
      key: 'd',
      effect: 'require',
      when: toBeLabeled,
      items: ['fieldLabel', 'fireLabelledHardware'],
      says: 'A labeling agency inspects leaf and frame and relabels or rejects them; hardware is ordered listed for fire doors until then.',
    },
    {
      key: 'e',
      effect: 'require',
      when: takenAsRated,
      of: { family: ['strike'], failMode: ['secure'] },
      items: ['fireListedStrike'],
      says: 'While the rating is open the strike is ordered with a fire listing.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: takenAsRated,
      of: { family: ['strike'], failMode: ['safe'] },
      says: 'A label is missing where one belongs, so the door counts as a fire door, and a fail-safe strike lets go when power fails.',
    },
    {
      key: 'g',
      effect: 'prohibit',
      when: takenAsRated,
      of: {
        device: [
          'boltSolenoid',
          'boltMotor',
          'glassPatchLock',
          'glassRailExit',
          'narrowStileLatch',
          'gateLock',
        ],
      },
      says: 'A label is missing where one belongs, so the door counts as a fire door, and this device is not made with a label for fire doors.',
    },
  ],
});

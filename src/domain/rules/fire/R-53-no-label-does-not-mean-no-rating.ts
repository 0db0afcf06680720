import { text, under } from '../../codes/sections.ts';
import { all, any, atMost, is, no, not, over, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

/** A new opening has no label yet: it is ordered with the door. */
const labelMissing = all(yes('fireRated'), no('labelSeen'), is('workStatus', 'existing', 'altered'));
const saidUnrated = all(
  atMost('fireRatingMin', 0),
  over('wallRatingMin', 0),
  not(is('wallKind', 'none', 'smokePartition')),
);
const bare = { ...rated, labelSeen: false, workStatus: 'existing' } as const;
const odd = { fireRatingMin: 0, wallRatingMin: 60, wallKind: 'corridor', labelSeen: true } as const;

export const R53 = defineRule({
  id: 'R-53',
  title: 'A missing label does not make a rated wall’s door ordinary',
  family: 'fire',
  book: 'nfpa80',
  cites: [text('nfpa80', '5.1', 'Inspection of labels'), under('openingProtectives')],
  confidence: 'secondary',
  note: 'Rated exterior walls count too, though far from a lot line their openings may be free of rating.',
  why: 'Labels are painted over or fall off; the wall still asks for a fire door.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'labelSeen',
      severity: 'warn',
      when: labelMissing,
      says: 'No fire label was seen though a rating is needed: it is treated as a fire door, and the label or its record has to be found.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'fireRatingMin',
      severity: 'warn',
      when: saidUnrated,
      says: 'The door is entered as unrated but stands in a wall rated {wallRatingMin}: it is treated as a fire door until somebody shows why not.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: any(labelMissing, saidUnrated),
      says: 'Wall and label do not agree here: a reviewer settles the rating of this door.',
    },
  ],
  cases: cases(
    ['existing rated door, no label', bare, 'yes', { clause: 'a', does: 'warn labelSeen' }],
    ['altered rated door, no label', { ...bare, workStatus: 'altered' }, 'yes', { clause: 'a' }],
    ['label seen', { ...bare, labelSeen: true }, 'no', { clause: 'a' }],
    ['new opening', { ...bare, workStatus: 'new' }, 'no', { clause: 'a' }],
    ['unrated door in an unrated wall', { ...bare, ...unrated }, 'no', { clause: 'a' }],
    ['label not looked for', { ...rated, workStatus: 'existing' }, 'unknown', { clause: 'a' }],
    ['unrated door in a rated corridor', odd, 'yes', { clause: 'b', does: 'warn fireRatingMin' }],
    ['a wall rated one minute is rated', { ...odd, wallRatingMin: 1 }, 'yes', { clause: 'b' }],
    ['rated door in a rated corridor', { ...odd, fireRatingMin: 20 }, 'no', { clause: 'b' }],
    ['door rated one minute is not unrated', { ...odd, fireRatingMin: 1 }, 'no', { clause: 'b' }],
    ['wall not rated', { ...odd, wallRatingMin: 0 }, 'no', { clause: 'b' }],
    ['ordinary wall', { ...odd, wallKind: 'none' }, 'no', { clause: 'b' }],
    ['smoke partition', { ...odd, wallKind: 'smokePartition' }, 'no', { clause: 'b' }],
    ['wall rating not known', { fireRatingMin: 0, wallKind: 'corridor' }, 'unknown', { clause: 'b' }],
    ['label missing', bare, 'yes', { clause: 'c', does: 'signOff must' }],
    ['altered, label missing', { ...bare, workStatus: 'altered' }, 'yes', { clause: 'c' }],
    ['unrated door in a rated corridor', odd, 'yes', { clause: 'c' }],
    ['a wall rated one minute is rated', { ...odd, wallRatingMin: 1 }, 'yes', { clause: 'c' }],
    [
      'labelled rated door',
      { ...bare, labelSeen: true, wallRatingMin: 60, wallKind: 'corridor' },
      'no',
      { clause: 'c' },
    ],
    ['door rated one minute, label seen', { ...odd, fireRatingMin: 1 }, 'no', { clause: 'c' }],
    ['new rated door has no label yet', { ...bare, workStatus: 'new' }, 'no', { clause: 'c' }],
    ['unrated door, unrated wall, no label', { ...bare, ...unrated }, 'no', { clause: 'c' }],
    ['ordinary wall, label seen', { ...odd, wallKind: 'none' }, 'no', { clause: 'c' }],
    ['smoke partition, label seen', { ...odd, wallKind: 'smokePartition' }, 'no', { clause: 'c' }],
    ['nothing surveyed', {}, 'unknown', { clause: 'c' }],
  ),
});

import { text, under } from '../../codes/sections.ts';
import { all, any, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

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
const heat = { ...rated, holdOpen: 'heatOnly' } as const;
const elsewhere = { wallKind: 'fireBarrier', egressRole: 'exitAccess' } as const;
const walls = [
  'corridor',
  'otherPartition',
  'exitEnclosure',
  'horizontalExit',
  'fireWall',
  'smokeBarrier',
] as const;
const roles = ['crossCorridor', 'stairEntry', 'stairDischarge', 'horizontalExit'] as const;

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
  cases: cases(
    ['rated, wedged', { ...rated, holdOpen: 'wedge' }, 'yes', { clause: 'a', does: 'warn holdOpen' }],
    [
      'rated, held by a detector-released holder',
      { ...rated, holdOpen: 'detectorReleased' },
      'no',
      { clause: 'a' },
    ],
    ['unrated, wedged', { ...unrated, holdOpen: 'wedge' }, 'no', { clause: 'a' }],
    ['hold-open not surveyed', rated, 'unknown', { clause: 'a' }],
    ['rated, wedged', { ...rated, holdOpen: 'wedge' }, 'yes', { clause: 'b', does: ['smokeHoldOpen'] }],
    ['rated, released by detection', { ...rated, holdOpen: 'detectorReleased' }, 'yes', { clause: 'b' }],
    [
      'corridor door on a fusible link',
      { ...heat, ...elsewhere, wallKind: 'corridor' },
      'yes',
      { clause: 'b' },
    ],
    ['storage room in a fire barrier on a fusible link', { ...heat, ...elsewhere }, 'no', { clause: 'b' }],
    [
      'corridor door not held open',
      { ...rated, holdOpen: 'none', wallKind: 'corridor' },
      'no',
      { clause: 'b' },
    ],
    ['unrated, released by detection', { ...unrated, holdOpen: 'detectorReleased' }, 'no', { clause: 'b' }],
    ['hold-open not surveyed', rated, 'unknown', { clause: 'b' }],
    ...walls.map(
      (wallKind) =>
        [
          `fusible link, wall: ${wallKind}`,
          { ...heat, ...elsewhere, wallKind },
          'yes',
          { clause: 'c', does: 'warn holdOpen' },
        ] as const,
    ),
    ...walls.map(
      (wallKind) =>
        [
          `fusible link, wall: ${wallKind}`,
          { ...heat, ...elsewhere, wallKind },
          'yes',
          { clause: 'b' },
        ] as const,
    ),
    ...roles.map(
      (egressRole) =>
        [
          `fusible link, role: ${egressRole}`,
          { ...heat, ...elsewhere, egressRole },
          'yes',
          { clause: 'c' },
        ] as const,
    ),
    ...roles.map(
      (egressRole) =>
        [
          `fusible link, role: ${egressRole}`,
          { ...heat, ...elsewhere, egressRole },
          'yes',
          { clause: 'b' },
        ] as const,
    ),
    ['fusible link in a fire barrier, ordinary way out', { ...heat, ...elsewhere }, 'no', { clause: 'c' }],
    [
      'corridor door released by smoke',
      { ...rated, holdOpen: 'detectorReleased', wallKind: 'corridor' },
      'no',
      { clause: 'c' },
    ],
    [
      'unrated door in a corridor, fusible link',
      { ...unrated, holdOpen: 'heatOnly', wallKind: 'corridor' },
      'no',
      { clause: 'c' },
    ],
    ['wall not surveyed', heat, 'unknown', { clause: 'c' }],
    [
      'fusible link in a fire barrier, ordinary way out',
      { ...heat, ...elsewhere },
      'yes',
      { clause: 'd', does: 'signOff must' },
    ],
    ...walls.map(
      (wallKind) =>
        [
          `fusible link, wall: ${wallKind}`,
          { ...heat, ...elsewhere, wallKind },
          'no',
          { clause: 'd' },
        ] as const,
    ),
    ...roles.map(
      (egressRole) =>
        [
          `fusible link, role: ${egressRole}`,
          { ...heat, ...elsewhere, egressRole },
          'no',
          { clause: 'd' },
        ] as const,
    ),
    [
      'released by smoke in a fire barrier',
      { ...rated, ...elsewhere, holdOpen: 'detectorReleased' },
      'no',
      { clause: 'd' },
    ],
    ['unrated, fusible link', { ...unrated, ...elsewhere, holdOpen: 'heatOnly' }, 'no', { clause: 'd' }],
    ['wall not surveyed', heat, 'unknown', { clause: 'd' }],
  ),
});

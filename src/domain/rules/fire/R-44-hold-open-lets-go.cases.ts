import { cases } from '../rule.ts';
import { rated, unrated } from './given.ts';

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

export const R44Cases = cases(
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
);

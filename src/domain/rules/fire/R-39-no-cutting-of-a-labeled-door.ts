import { text, under } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not, yes } from '../../logic/condition.ts';
import type { FactValues } from '../../model/fields.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

/** An approval nobody has shown does not count; a work status nobody entered leaves the question open. */
const inPlace = all(yes('fireRated'), is('workStatus', 'existing', 'altered'));
const approved = all(isKnown('fieldModificationApproved'), yes('fieldModificationApproved'));
/** Each part under its own label: what the frame was made for says nothing of the leaf, nor of the other leaf. */
const frameUncut = all(inPlace, no('framePrepared'), not(approved));
const leafUncut = all(inPlace, no('leafPrepared'), not(approved));
const otherLeafUncut = all(inPlace, no('inactiveLeafPrepared'), not(approved));
/** Without a mullion the strike of a pair sits in the edge of the other leaf. */
const strikeInOtherLeaf = all(yes('isPair'), no('mullion'));
const anythingIsCut = any(
  no('framePrepared'),
  no('leafPrepared'),
  all(yes('isPair'), no('inactiveLeafPrepared')),
  no('leafRaceway'),
);
/** Wired devices that need a pocket, a bore or a wire way; the rest is screwed to the surface. */
const cuttingDevices = { wired: true, not: { device: ['magnet', 'delayedMagnet', 'strikeRim'] } } as const;

const standing = { ...rated, workStatus: 'altered', framePrepared: false, leafPrepared: false } as const;
const made = {
  ...rated,
  workStatus: 'altered',
  framePrepared: true,
  leafPrepared: true,
  inactiveLeafPrepared: true,
  leafRaceway: true,
} as const;
const plain = { ...standing, ...unrated } as const;
const pair = { ...made, doorType: 'pair', mullion: false, inactiveLeafPrepared: false } as const;

type Part = 'framePrepared' | 'leafPrepared' | 'inactiveLeafPrepared' | 'leafRaceway';

/** Both sides of everything around one part, for a clause whose own condition the other facts satisfy. */
const bothSides = (clause: string, on: string, part: Part, also: FactValues): readonly CaseRow[] => {
  const at = { clause, on };
  const uncut: FactValues = { ...made, ...also, [part]: false };
  return [
    ['labeled door, not altered', { ...uncut, workStatus: 'existing' }, 'yes', at],
    ['labeled door being altered', uncut, 'yes', at],
    ['laboratory asked and said no', { ...uncut, fieldModificationApproved: false }, 'yes', at],
    ['laboratory has approved the cutting', { ...uncut, fieldModificationApproved: true }, 'no', at],
    ['this part was made with the preparation', { ...uncut, [part]: true }, 'no', at],
    ['new opening: the preparation comes with the label', { ...uncut, workStatus: 'new' }, 'no', at],
    ['no rating', { ...uncut, ...unrated }, 'no', at],
    ['new or existing not known', without(uncut, 'workStatus'), 'unknown', at],
    ['preparation of this part not surveyed', without(uncut, part), 'unknown', at],
  ];
};

const approvedDoor = {
  ...standing,
  leafRaceway: true,
  doorType: 'single',
  fieldModificationApproved: true,
} as const;
/** Every leaf of the clauses where the laboratory has approved; `unwired` is a device without a wire. */
const approvalRows = (clause: string, unwired: string): readonly CaseRow[] => {
  const asked = { clause, on: 'strikeMortise/secure/free' } as const;
  const allMade = { ...made, doorType: 'pair', fieldModificationApproved: true } as const;
  return [
    ['approved by the laboratory', approvedDoor, 'yes', asked],
    [
      'existing, approved',
      { ...approvedDoor, workStatus: 'existing' },
      'yes',
      { clause, on: 'mortiseLock/secure/free' },
    ],
    ...(['framePrepared', 'leafPrepared', 'inactiveLeafPrepared', 'leafRaceway'] as const).map(
      (part): CaseRow => [`approved, ${part} alone is missing`, { ...allMade, [part]: false }, 'yes', asked],
    ),
    [
      'single leaf has no other leaf',
      { ...allMade, doorType: 'single', inactiveLeafPrepared: false },
      'no',
      asked,
    ],
    ['not approved', { ...standing, fieldModificationApproved: false }, 'no', asked],
    ['approval not asked: nothing is cut', standing, 'no', asked],
    ['approved, new or existing not known', without(approvedDoor, 'workStatus'), 'unknown', asked],
    ['made with every preparation', allMade, 'no', asked],
    ['new opening', { ...approvedDoor, workStatus: 'new' }, 'no', asked],
    ['unrated door', { ...plain, fieldModificationApproved: true }, 'no', asked],
    ...onEach(
      ['magnet/safe/sensor', 'delayedMagnet/safe/delayed', 'strikeRim/secure/free', unwired],
      'approved, but nothing is cut for it',
      approvedDoor,
      'no',
      clause,
    ),
  ];
};

const boredDoor = { latch: 'bored' } as const;
const mortiseDoor = { latch: 'mortise' } as const;

export const R39 = defineRule({
  id: 'R-39',
  title: 'A labeled leaf or frame in place is not cut on site',
  family: 'fire',
  book: 'nfpa80',
  cites: [
    text('nfpa80', '5.1.5.2', 'Field modifications'),
    text('nfpa80', '4.1.3', 'Preparation on site'),
    under('openingProtectives'),
  ],
  confidence: 'secondary',
  note: 'Each part is judged by its own label. What each device needs cut is trade practice. Clause numbers of NFPA 80 are from general knowledge and moved between editions.',
  why: 'The label covers the door as it was made; a pocket or raceway cut later voids it unless the listing laboratory approved it first.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(frameUncut, not(strikeInOtherLeaf), not(is('strikePrep', 'ansi478'))),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The strike needs a pocket cut into the labeled frame; only a laboratory’s approval, or a labeled frame made with the cutout, lifts this.',
    },
    {
      key: 'j',
      effect: 'prohibit',
      when: all(otherLeafUncut, strikeInOtherLeaf),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The strike would go in the edge of the inactive labeled leaf, with a raceway to it, and that leaf was not made that way; use a lock in the active leaf, or a labeled leaf made with the pocket.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(leafUncut, not(is('latch', 'mortise', 'mortiseDeadbolt'))),
      of: { device: ['mortiseLock'] },
      says: 'This labeled leaf has no mortise pocket: a mortise lock needs a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(leafUncut, not(is('latch', 'bored', 'boredPlusDeadbolt'))),
      of: { device: ['cylindricalLock'] },
      says: 'This labeled leaf is not bored for a cylindrical lock: it needs a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(leafUncut, is('latch', 'pushPull', 'roller')),
      of: { family: ['battery', 'mechanical'] },
      says: 'This labeled leaf has no preparation for a lock; boring or mortising it takes a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(inPlace, not(approved), no('leafRaceway')),
      of: { transfer: true },
      says: 'This labeled leaf has no raceway, and coring one on site voids the label unless the laboratory approved it first.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: all(leafUncut, no('hasExitDevice')),
      of: { device: ['delayedExitDevice'] },
      says: 'The bar would replace a lock whose preparation the label does not allow to be filled: use a labeled leaf made for the bar.',
    },
    {
      key: 'g',
      effect: 'prohibit',
      when: all(inPlace, not(approved)),
      of: { device: ['shearMagnet'] },
      says: 'A shear magnet needs pockets in head and leaf, and this labeled door was not made with them.',
    },
    {
      key: 'h',
      effect: 'require',
      when: all(inPlace, approved, anythingIsCut),
      of: cuttingDevices,
      items: ['laboratoryApproval'],
      says: 'The laboratory’s letter names this door and this cut, and is on hand before anyone cuts.',
    },
    {
      key: 'i',
      effect: 'signOff',
      grade: 'must',
      when: all(inPlace, approved, anythingIsCut),
      of: cuttingDevices,
      says: 'A labeled door is cut on the laboratory’s approval: a reviewer reads it before issue.',
    },
  ],
  cases: cases(
    ...doing(
      {
        b: 'prohibit',
        c: 'prohibit',
        f: 'prohibit',
        g: 'prohibit',
        h: ['laboratoryApproval'],
        i: 'signOff must',
      },
      [
        ...bothSides('a', 'strikeMortise/secure/free', 'framePrepared', {
          strikePrep: 'none',
          doorType: 'single',
        }),
        [
          'frame has the small cutout only',
          { ...standing, strikePrep: 'light234', doorType: 'single' },
          'yes',
          { clause: 'a', on: 'strikeCylindrical/secure/free', does: 'prohibit' },
        ],
        [
          'frame has the full cutout',
          { ...standing, strikePrep: 'ansi478', doorType: 'single' },
          'no',
          { clause: 'a', on: 'strikeCylindrical/secure/free' },
        ],
        [
          'leaf made for a lock, frame not made for a strike',
          { ...made, framePrepared: false, strikePrep: 'none', doorType: 'single' },
          'yes',
          { clause: 'a', on: 'strikeMortise/secure/free' },
        ],
        [
          'pair with a mullion: the strike sits in it',
          { ...pair, framePrepared: false, mullion: true, strikePrep: 'none' },
          'yes',
          { clause: 'a', on: 'strikeMortise/secure/free' },
        ],
        [
          'pair without one is clause j',
          { ...pair, framePrepared: false, strikePrep: 'none' },
          'no',
          { clause: 'a', on: 'strikeMortise/secure/free' },
        ],
        [
          'cutout not surveyed',
          { ...standing, doorType: 'single' },
          'unknown',
          { clause: 'a', on: 'strikeMortise/secure/free' },
        ],
        [
          'a rim strike sits on the surface',
          { ...standing, strikePrep: 'none', doorType: 'single' },
          'no',
          { clause: 'a', on: 'strikeRim/secure/free' },
        ],
        ...bothSides('j', 'strikeMortise/secure/free', 'inactiveLeafPrepared', {
          doorType: 'pair',
          mullion: false,
        }),
        [
          'the cutout of the frame does not help',
          { ...pair, strikePrep: 'ansi478' },
          'yes',
          { clause: 'j', on: 'strikeCylindrical/secure/free', does: 'prohibit' },
        ],
        [
          'mullion between the leaves',
          { ...pair, mullion: true },
          'no',
          { clause: 'j', on: 'strikeMortise/secure/free' },
        ],
        [
          'single leaf',
          { ...pair, doorType: 'single' },
          'no',
          { clause: 'j', on: 'strikeMortise/secure/free' },
        ],
        [
          'mullion not surveyed',
          without(pair, 'mullion'),
          'unknown',
          { clause: 'j', on: 'strikeMortise/secure/free' },
        ],
        ['a lock in the active leaf', pair, 'no', { clause: 'j', on: 'mortiseLock/secure/free' }],
        ...bothSides('b', 'mortiseLock/secure/free', 'leafPrepared', boredDoor),
        [
          'mortise latch there',
          { ...standing, ...mortiseDoor },
          'no',
          { clause: 'b', on: 'mortiseLock/secure/free' },
        ],
        [
          'mortise lock with deadbolt there',
          { ...standing, latch: 'mortiseDeadbolt' },
          'no',
          { clause: 'b', on: 'mortiseLock/safe/free' },
        ],
        [
          'bored latch, a cylindrical lock is judged apart',
          { ...standing, ...boredDoor },
          'no',
          { clause: 'b', on: 'cylindricalLock/secure/free' },
        ],
        ...bothSides('c', 'cylindricalLock/secure/free', 'leafPrepared', mortiseDoor),
        [
          'bored latch there',
          { ...standing, ...boredDoor },
          'no',
          { clause: 'c', on: 'cylindricalLock/secure/free' },
        ],
        [
          'bored latch and deadbolt there',
          { ...standing, latch: 'boredPlusDeadbolt' },
          'no',
          { clause: 'c', on: 'cylindricalLock/safe/free' },
        ],
        [
          'a mortise lock is judged apart',
          { ...standing, ...mortiseDoor },
          'no',
          { clause: 'c', on: 'mortiseLock/secure/free' },
        ],
        ...bothSides('d', 'batteryLock/asIs/free', 'leafPrepared', { latch: 'pushPull' }),
        [
          'roller latch, mechanical lock',
          { ...standing, latch: 'roller' },
          'yes',
          { clause: 'd', on: 'mechanicalLock/none/free', does: 'prohibit' },
        ],
        [
          'the present bored latch stays',
          { ...standing, latch: 'bored' },
          'no',
          { clause: 'd', on: 'batteryLock/asIs/free' },
        ],
        ['latch not surveyed', standing, 'unknown', { clause: 'd', on: 'batteryLock/asIs/free' }],
        [
          'a strike is judged apart',
          { ...standing, latch: 'pushPull' },
          'no',
          { clause: 'd', on: 'strikeMortise/secure/free' },
        ],
        ...bothSides('e', 'exitTrim/secure/free', 'leafRaceway', {}),
        ...onEach(
          ['mortiseLock/secure/free', 'latchRetractionMotor/secure/free', 'delayedExitDevice/safe/delayed'],
          'made for the lock, but not cored',
          { ...made, leafRaceway: false },
          'yes',
          { clause: 'e', does: 'prohibit' },
        ),
        [
          'a strike in the frame needs no wire way',
          { ...standing, leafRaceway: false },
          'no',
          { clause: 'e', on: 'strikeRim/secure/free' },
        ],
        ...bothSides('f', 'delayedExitDevice/safe/delayed', 'leafPrepared', {
          latch: 'mortise',
          panicPresent: false,
        }),
        [
          'an exit device is there already',
          { ...standing, latch: 'rimExit' },
          'no',
          { clause: 'f', on: 'delayedExitDevice/safe/delayed' },
        ],
        ['latch not surveyed', standing, 'unknown', { clause: 'f', on: 'delayedExitDevice/safe/delayed' }],
        [
          'trim is judged apart',
          { ...standing, latch: 'mortise', panicPresent: false },
          'no',
          { clause: 'f', on: 'exitTrim/secure/free' },
        ],
        ['labeled door in place', standing, 'yes', { clause: 'g', on: 'shearMagnet/safe/sensor' }],
        [
          'existing, made for strike and lock',
          { ...made, workStatus: 'existing' },
          'yes',
          { clause: 'g', on: 'shearMagnet/safe/sensor' },
        ],
        ['laboratory has approved', approvedDoor, 'no', { clause: 'g', on: 'shearMagnet/safe/sensor' }],
        [
          'laboratory said no',
          { ...standing, fieldModificationApproved: false },
          'yes',
          { clause: 'g', on: 'shearMagnet/safe/sensor' },
        ],
        [
          'new opening',
          { ...standing, workStatus: 'new' },
          'no',
          { clause: 'g', on: 'shearMagnet/safe/sensor' },
        ],
        ['no rating', plain, 'no', { clause: 'g', on: 'shearMagnet/safe/sensor' }],
        [
          'new or existing not known',
          without(standing, 'workStatus'),
          'unknown',
          { clause: 'g', on: 'shearMagnet/safe/sensor' },
        ],
        [
          'a magnet on the face of the frame cuts nothing',
          standing,
          'no',
          { clause: 'g', on: 'magnet/safe/sensor' },
        ],
        ...approvalRows('h', 'mechanicalLock/none/free'),
        ...approvalRows('i', 'batteryLock/asIs/free'),
      ],
    ),
  ),
});

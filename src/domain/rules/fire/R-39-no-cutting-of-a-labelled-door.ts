import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, no, not, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

/** An approval nobody has shown does not count; a work status nobody entered leaves the question open. */
const labelledAsItStands = all(
  yes('fireRated'),
  is('workStatus', 'existing', 'altered'),
  no('preparedUnderLabel'),
);
const approved = all(isKnown('fieldModificationApproved'), yes('fieldModificationApproved'));
const uncut = all(labelledAsItStands, not(approved));

const standing = { ...rated, workStatus: 'altered', preparedUnderLabel: false } as const;
const approvedDoor = { ...standing, fieldModificationApproved: true } as const;
const made = { ...rated, workStatus: 'altered', preparedUnderLabel: true } as const;
const fresh = { ...rated, workStatus: 'new', preparedUnderLabel: false } as const;
const plain = { ...unrated, workStatus: 'altered', preparedUnderLabel: false } as const;

/** Every leaf of `uncut` once, for a clause whose own condition the facts given satisfy. */
const bothSides = (clause: string, on: string, also: object) =>
  [
    [
      'existing labelled door, not altered',
      { ...standing, workStatus: 'existing', ...also },
      'yes',
      { clause, on },
    ],
    ['labelled door being altered', { ...standing, ...also }, 'yes', { clause, on }],
    [
      'laboratory asked and said no',
      { ...standing, fieldModificationApproved: false, ...also },
      'yes',
      { clause, on },
    ],
    ['laboratory has approved the cutting', { ...approvedDoor, ...also }, 'no', { clause, on }],
    ['made with the preparation under its label', { ...made, ...also }, 'no', { clause, on }],
    ['new opening: the preparation comes with the label', { ...fresh, ...also }, 'no', { clause, on }],
    ['no rating', { ...plain, ...also }, 'no', { clause, on }],
    [
      'new or existing not known',
      { ...rated, preparedUnderLabel: false, ...also },
      'unknown',
      { clause, on },
    ],
    ['preparation not surveyed', { ...rated, workStatus: 'altered', ...also }, 'unknown', { clause, on }],
  ] as const;

/** Every leaf of the clauses where the laboratory has approved; `unwired` is a device without a wire. */
const approvalRows = (clause: string, unwired: string): readonly CaseRow[] => {
  const asked = { clause, on: 'strikeMortise/secure/free' } as const;
  return [
    ['approved by the laboratory', approvedDoor, 'yes', asked],
    [
      'existing, approved by the laboratory',
      { ...approvedDoor, workStatus: 'existing' },
      'yes',
      { clause, on: 'mortiseLock/secure/free' },
    ],
    ['not approved', { ...standing, fieldModificationApproved: false }, 'no', asked],
    ['approval not asked: nothing is cut', standing, 'no', asked],
    ['approved, new or existing not known', without(approvedDoor, 'workStatus'), 'unknown', asked],
    ['made with the preparation', { ...made, fieldModificationApproved: true }, 'no', asked],
    ['new opening', { ...fresh, fieldModificationApproved: true }, 'no', asked],
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

const boredDoor = { latch: 'bored', leafRaceway: true } as const;
const mortiseDoor = { latch: 'mortise', leafRaceway: true } as const;

export const R39 = defineRule({
  id: 'R-39',
  title: 'A labelled leaf or frame in place is not cut on site',
  family: 'fire',
  book: 'nfpa80',
  cites: [
    text('nfpa80', '5.1.5.2', 'Field modifications'),
    text('nfpa80', '4.1.3', 'Preparation on site'),
    under('openingProtectives'),
  ],
  confidence: 'secondary',
  note: 'What each device needs cut is trade practice. Clause numbers of NFPA 80 are from general knowledge and moved between editions.',
  why: 'The label covers the door as it was made; a pocket or raceway cut later voids it unless the laboratory agreed first.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(uncut, not(all(is('strikePrep', 'ansi478'), is('doorType', 'single')))),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The strike needs a pocket cut into a labelled frame or leaf; only a laboratory’s approval, or a labelled part made with the cut-out, lifts this.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(uncut, not(is('latch', 'mortise', 'mortiseDeadbolt'))),
      of: { device: ['mortiseLock'] },
      says: 'This labelled leaf has no mortise pocket: a mortise lock needs a new labelled leaf or a laboratory’s approval.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(uncut, not(is('latch', 'bored', 'boredPlusDeadbolt'))),
      of: { device: ['cylindricalLock'] },
      says: 'This labelled leaf is not bored for a cylindrical lock: it needs a new labelled leaf or a laboratory’s approval.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(uncut, is('latch', 'pushPull', 'roller')),
      of: { family: ['battery', 'mechanical'] },
      says: 'This labelled leaf has no preparation for a lock; boring or mortising it takes a new labelled leaf or a laboratory’s approval.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(uncut, no('leafRaceway')),
      of: { transfer: true },
      says: 'No wire way runs through this labelled leaf, and coring one on site voids the label unless the laboratory agreed first.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: all(uncut, no('hasExitDevice')),
      of: { device: ['delayedExitDevice'] },
      says: 'The bar would take the place of a lock whose holes the label does not let anyone fill: it takes a labelled leaf made for the bar.',
    },
    {
      key: 'g',
      effect: 'prohibit',
      when: uncut,
      of: { device: ['shearMagnet'] },
      says: 'A shear magnet needs pockets in head and leaf, and this labelled door was not made with them.',
    },
    {
      key: 'h',
      effect: 'require',
      when: all(labelledAsItStands, approved),
      of: { wired: true, not: { device: ['magnet', 'delayedMagnet', 'strikeRim'] } },
      items: ['laboratoryApproval'],
      says: 'The laboratory’s letter names this door and this cut, and is there before anybody cuts.',
    },
    {
      key: 'i',
      effect: 'signOff',
      grade: 'must',
      when: all(labelledAsItStands, approved),
      of: { wired: true, not: { device: ['magnet', 'delayedMagnet', 'strikeRim'] } },
      says: 'A labelled door is cut on the word of the laboratory: a reviewer reads the approval before issue.',
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
        ...bothSides('a', 'strikeMortise/secure/free', { strikePrep: 'none', doorType: 'single' }),
        [
          'frame has the small cut-out only',
          { ...standing, strikePrep: 'light234', doorType: 'single' },
          'yes',
          { clause: 'a', on: 'strikeCylindrical/secure/free', does: 'prohibit' },
        ],
        [
          'frame has the full cut-out',
          { ...standing, strikePrep: 'ansi478', doorType: 'single' },
          'no',
          { clause: 'a', on: 'strikeCylindrical/secure/free' },
        ],
        [
          'pair: the strike sits in the other leaf',
          { ...standing, strikePrep: 'ansi478', doorType: 'pair' },
          'yes',
          { clause: 'a', on: 'strikeMortise/secure/free' },
        ],
        [
          'cut-out not surveyed',
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
        ...bothSides('b', 'mortiseLock/secure/free', boredDoor),
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
        ...bothSides('c', 'cylindricalLock/secure/free', mortiseDoor),
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
        ...bothSides('d', 'batteryLock/asIs/free', { latch: 'pushPull' }),
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
        ...bothSides('e', 'exitTrim/secure/free', { leafRaceway: false }),
        ...onEach(
          ['mortiseLock/secure/free', 'latchRetractionMotor/secure/free', 'delayedExitDevice/safe/delayed'],
          'no wire way in the leaf',
          { ...standing, leafRaceway: false },
          'yes',
          { clause: 'e', does: 'prohibit' },
        ),
        [
          'wire way there',
          { ...standing, leafRaceway: true },
          'no',
          { clause: 'e', on: 'exitTrim/secure/free' },
        ],
        ['wire way not surveyed', standing, 'unknown', { clause: 'e', on: 'exitTrim/secure/free' }],
        [
          'a strike in the frame needs no wire way',
          { ...standing, leafRaceway: false },
          'no',
          { clause: 'e', on: 'strikeRim/secure/free' },
        ],
        ...bothSides('f', 'delayedExitDevice/safe/delayed', { latch: 'mortise', panicPresent: false }),
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
        ...bothSides('g', 'shearMagnet/safe/sensor', {}),
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

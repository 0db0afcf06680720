import type { FactValues } from '../../model/fields.ts';
import { onEach } from '../onEach.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

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

export const R39Cases = cases(
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
        strikePrep: 'light234',
        doorType: 'single',
      }),
      ...(['none', 'residential'] as const).flatMap((strikePrep): readonly CaseRow[] => {
        const bare = { ...without(standing, 'framePrepared'), strikePrep, doorType: 'single' } as const;
        const at = { clause: 'a', on: 'strikeMortise/secure/free' };
        return [
          ['no cutout there: nobody is asked again', bare, 'yes', at],
          ['said to be made for a strike all the same', { ...bare, framePrepared: true }, 'no', at],
          ['new frame', { ...bare, workStatus: 'new' }, 'no', at],
        ];
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
);

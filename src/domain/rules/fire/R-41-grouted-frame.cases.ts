import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

const grout = { frameGrouted: true, frameMaterial: 'hollowMetal', workStatus: 'existing' } as const;

const fresh = { ...grout, workStatus: 'new' } as const;

export const R41Cases = cases(
  ['grouted frame, strike', grout, 'yes', { clause: 'a', on: 'strikeMortise/secure/free', does: 'caution' }],
  [
    'hollow frame, strike',
    { ...grout, frameGrouted: false },
    'no',
    { clause: 'a', on: 'strikeMortise/secure/free' },
  ],
  ['not tapped', { workStatus: 'existing' }, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
  ['a lock in the leaf', grout, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
  [
    'rated and grouted',
    { ...rated, ...grout },
    'yes',
    { clause: 'c', on: 'strikeMortise/secure/free', does: 'signOff must' },
  ],
  ['unrated and grouted', { ...unrated, ...grout }, 'no', { clause: 'c', on: 'strikeMortise/secure/free' }],
  [
    'rated, hollow frame',
    { ...rated, ...grout, frameGrouted: false },
    'no',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  [
    'rated, not tapped',
    { ...rated, workStatus: 'existing' },
    'unknown',
    { clause: 'c', on: 'strikeMortise/secure/free' },
  ],
  [
    'rated and grouted, lock in the leaf',
    { ...rated, ...grout },
    'no',
    { clause: 'c', on: 'mortiseLock/secure/free' },
  ],
  [
    'rated, grouted, no conduit',
    { ...rated, ...grout, frameConduit: false },
    'yes',
    { clause: 'd', on: 'mortiseLock/secure/free', does: 'signOff should' },
  ],
  [
    'rated, grouted, conduit there',
    { ...rated, ...grout, frameConduit: true },
    'no',
    { clause: 'd', on: 'mortiseLock/secure/free' },
  ],
  [
    'rated, hollow frame',
    { ...rated, ...grout, frameGrouted: false, frameConduit: false },
    'no',
    { clause: 'd', on: 'mortiseLock/secure/free' },
  ],
  [
    'unrated, grouted, no conduit',
    { ...unrated, ...grout, frameConduit: false },
    'no',
    { clause: 'd', on: 'mortiseLock/secure/free' },
  ],
  ['conduit not known', { ...rated, ...grout }, 'unknown', { clause: 'd', on: 'mortiseLock/secure/free' }],
  [
    'a strike is asked for above',
    { ...rated, ...grout, frameConduit: false },
    'no',
    { clause: 'd', on: 'strikeRim/secure/free' },
  ],
  [
    'a battery lock needs no cable',
    { ...rated, ...grout, frameConduit: false },
    'no',
    { clause: 'd', on: 'batteryLock/asIs/free' },
  ],
  ...(['a', 'c'] as const).flatMap((clause): readonly CaseRow[] => [
    ['new frame, made for it', { ...rated, ...fresh }, 'no', { clause, on: 'strikeMortise/secure/free' }],
    [
      'frame being altered',
      { ...rated, ...grout, workStatus: 'altered' },
      'yes',
      { clause, on: 'strikeMortise/secure/free' },
    ],
    [
      'new or not: not known',
      without({ ...rated, ...grout }, 'workStatus'),
      'unknown',
      { clause, on: 'strikeMortise/secure/free' },
    ],
  ]),
  [
    'new frame, no conduit yet',
    { ...rated, ...fresh, frameConduit: false },
    'no',
    { clause: 'd', on: 'mortiseLock/secure/free' },
  ],
  [
    'new frame to be grouted',
    fresh,
    'yes',
    { clause: 'e', on: 'strikeMortise/secure/free', does: 'caution' },
  ],
  ['the same for a lock in the leaf', fresh, 'yes', { clause: 'e', on: 'mortiseLock/secure/free' }],
  [
    'new hollow frame',
    { ...fresh, frameGrouted: false },
    'no',
    { clause: 'e', on: 'mortiseLock/secure/free' },
  ],
  ['frame in place', grout, 'no', { clause: 'e', on: 'mortiseLock/secure/free' }],
  [
    'grout not settled',
    without(fresh, 'frameGrouted'),
    'unknown',
    { clause: 'e', on: 'mortiseLock/secure/free' },
  ],
  // Glass to wall or floor: nobody can tap a frame that is not there.
  ...(['a', 'c', 'd'] as const).flatMap((clause): readonly CaseRow[] => {
    const on = clause === 'd' ? 'mortiseLock/secure/free' : 'strikeMortise/secure/free';
    const bare = { ...rated, ...grout, frameMaterial: 'none', frameConduit: false } as const;
    return [
      ['no frame', bare, 'no', { clause, on }],
      ['no frame, not tapped', without(bare, 'frameGrouted'), 'no', { clause, on }],
      ['frame or none: not known', without(bare, 'frameMaterial'), 'unknown', { clause, on }],
    ];
  }),
  [
    'no frame to be ordered',
    { ...fresh, frameMaterial: 'none' },
    'no',
    { clause: 'e', on: 'mortiseLock/secure/free' },
  ],
  ['no wire, no box', fresh, 'no', { clause: 'e', on: 'batteryLock/asIs/free' }],
);

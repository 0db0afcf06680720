import { text } from '../../codes/sections.ts';
import { all, is, no, not, yes } from '../../logic/condition.ts';
import { type CaseRow, cases, defineRule } from '../rule.ts';
import { without } from '../without.ts';
import { rated, unrated } from './given.ts';

/** A new frame is made with strike box, mortar guards and conduit in the factory; nobody chips anything out of it. */
const standing = not(is('workStatus', 'new'));

const grout = { frameGrouted: true, workStatus: 'existing' } as const;
const fresh = { ...grout, workStatus: 'new' } as const;

export const R41 = defineRule({
  id: 'R-41',
  title: 'A grouted frame has no room for strike or wire',
  family: 'fire',
  book: 'practice',
  cites: [text('practice', '', 'Grouted frames'), text('nfpa80', '4.1.3', 'Preparation on site')],
  confidence: 'secondary',
  note: 'Mortar guards as part of the frame’s listing: secondary; the rest from general knowledge. Without power and without a cable path wired devices are refused by R-166.',
  why: 'Grout fills the pocket and the raceway; chipping it out of a labeled frame can void the label.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(standing, yes('frameGrouted')),
      of: { family: ['strike'] },
      says: 'There is grout where the strike body goes unless mortar guards were set; a lock in the leaf avoids it.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(standing, yes('fireRated'), yes('frameGrouted')),
      of: { family: ['strike'] },
      says: 'Installing a strike in this grouted fire frame means field work on a labeled frame: a reviewer agrees first.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'should',
      when: all(standing, yes('fireRated'), yes('frameGrouted'), no('frameConduit')),
      of: { wired: true, not: { family: ['strike'] } },
      says: 'Cable and box must reach this grouted fire frame without conduit: have someone work out how before the job starts.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(is('workStatus', 'new'), yes('frameGrouted')),
      of: { wired: true },
      says: 'The new frame will be grouted: order it with mortar guards at strike and hinges and with conduit to the box, because none of it can be added later.',
    },
  ],
  cases: cases(
    [
      'grouted frame, strike',
      grout,
      'yes',
      { clause: 'a', on: 'strikeMortise/secure/free', does: 'caution' },
    ],
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
    ['no wire, no box', fresh, 'no', { clause: 'e', on: 'batteryLock/asIs/free' }],
  ),
});

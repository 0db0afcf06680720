import { text } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';
import { rated, unrated } from './given.ts';

const grout = { frameGrouted: true } as const;

export const R41 = defineRule({
  id: 'R-41',
  title: 'A grouted frame has no room for strike or wire',
  family: 'fire',
  book: 'practice',
  cites: [text('practice', '', 'Grouted frames'), text('nfpa80', '4.1.3', 'Preparation on site')],
  confidence: 'secondary',
  note: 'Mortar guards as part of the frame’s listing: secondary; the rest from general knowledge. Without power and without a cable path wired devices are refused by R-166.',
  why: 'Mortar fills the pocket and the wire way; chipping it out of a labelled frame can cost the label.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: yes('frameGrouted'),
      of: { family: ['strike'] },
      says: 'Mortar stands where the strike’s body belongs unless guards were set; a lock in the leaf avoids it.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('fireRated'), yes('frameGrouted')),
      of: { family: ['strike'] },
      says: 'Fitting a strike into this grouted fire frame means working on a labelled part: a reviewer agrees first.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'should',
      when: all(yes('fireRated'), yes('frameGrouted'), no('frameConduit')),
      of: { wired: true, not: { family: ['strike'] } },
      says: 'Cable and box reach this grouted fire frame without a conduit: somebody looks at how that is done before work starts.',
    },
  ],
  cases: cases(
    [
      'grouted frame, strike',
      grout,
      'yes',
      { clause: 'a', on: 'strikeMortise/secure/free', does: 'caution' },
    ],
    ['hollow frame, strike', { frameGrouted: false }, 'no', { clause: 'a', on: 'strikeMortise/secure/free' }],
    ['not tapped', {}, 'unknown', { clause: 'a', on: 'strikeMortise/secure/free' }],
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
      { ...rated, frameGrouted: false },
      'no',
      { clause: 'c', on: 'strikeMortise/secure/free' },
    ],
    ['rated, not tapped', rated, 'unknown', { clause: 'c', on: 'strikeMortise/secure/free' }],
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
      { ...rated, frameGrouted: false, frameConduit: false },
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
  ),
});

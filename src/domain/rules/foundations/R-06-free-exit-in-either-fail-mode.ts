import { under } from '../../codes/sections.ts';
import { all, no, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const room = { egressRole: 'exitAccess' } as const;
const unrated = { ...room, fireRatingMin: 0, wallRatingMin: 0 } as const;

export const R06 = defineRule({
  id: 'R-06',
  title: 'Lever or bar that always opens: either fail mode lets people out',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'secondary',
  note: 'A strike on a rated door goes to R-31 and R-32, the stair side of a stair door to R-54.',
  why: 'Fail safe and fail secure describe who can get in when power is lost; the inside lever or bar works either way.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: all(yes('isEgress'), no('stairSideToLock')),
      of: { family: ['lock', 'exitDevice'], release: ['free'] },
      says: 'This lock stays latched and always opens from inside, so it may fail safe or fail secure; fail secure is the usual choice.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: all(yes('isEgress'), no('stairSideToLock'), no('fireRated')),
      of: { family: ['strike'], release: ['free'] },
      says: 'The lever or bar opens the door without the strike, so on this unrated door the strike may fail safe or fail secure; fail secure is the usual choice.',
    },
  ],
  cases: cases(
    ...onEach(
      [
        'mortiseLock/secure/free',
        'mortiseLock/safe/free',
        'exitTrim/safe/free',
        'latchRetractionMotor/secure/free',
        'narrowStileLatch/secure/free',
      ],
      'ordinary room door',
      room,
      'yes',
      'a',
    ),
    ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'mortiseLock/secure/free' }],
    [
      'stair side to be locked',
      { egressRole: 'stairEntry', stairLockWanted: 'stairSide' },
      'no',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    [
      'stair door, both sides open',
      { egressRole: 'stairEntry', stairLockWanted: 'none' },
      'yes',
      { clause: 'a', on: 'mortiseLock/secure/free', does: 'permit' },
    ],
    [
      'stair door, wish not known',
      { egressRole: 'stairEntry' },
      'unknown',
      { clause: 'a', on: 'mortiseLock/secure/free' },
    ],
    ...onEach(
      [
        'magnet/safe/sensor',
        'mortiseLock/secure/credentialOut',
        'exitTrim/safe/stairReentry',
        'strikeRim/secure/free',
        'mechanicalLock/none/free',
      ],
      'not meant here',
      room,
      'no',
      'a',
    ),
    ...onEach(
      ['strikeMortise/secure/free', 'strikeMortise/safe/free', 'strikeRim/safe/free'],
      'unrated room door',
      unrated,
      'yes',
      { clause: 'b', does: 'permit' },
    ),
    ['rated door', { ...room, fireRatingMin: 20 }, 'no', { clause: 'b', on: 'strikeMortise/secure/free' }],
    ['rating not known', room, 'unknown', { clause: 'b', on: 'strikeMortise/secure/free' }],
    [
      'cabinet',
      { ...unrated, egressRole: 'noOccupiedSpace' },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    [
      'stair side to be locked',
      { ...unrated, egressRole: 'stairEntry', stairLockWanted: 'both' },
      'no',
      { clause: 'b', on: 'strikeMortise/secure/free' },
    ],
    ...onEach(
      ['strikeMortise/secure/none', 'mortiseLock/secure/free', 'magnet/safe/sensor'],
      'not meant here',
      unrated,
      'no',
      'b',
    ),
  ),
});

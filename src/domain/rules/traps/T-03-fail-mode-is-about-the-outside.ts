import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

export const T03 = defineRule({
  id: 'T-03',
  title: 'Fail mode speaks of the outside only',
  family: 'traps',
  book: 'practice',
  cites: [text('practice', '', 'Fail safe and fail secure')],
  confidence: 'secondary',
  why: 'The inside lever or bar draws the latch by hand in either fail mode.',
  clauses: [
    {
      effect: 'permit',
      when: yes('isEgress'),
      of: { family: ['lock', 'exitDevice'], failMode: ['secure'], release: ['free'] },
      says: 'Fail secure keeps only the outside locked when power is lost; the lever or bar inside opens always, so it may stand on an egress door.',
    },
  ],
  cases: cases(
    ...onEach(
      ['mortiseLock/secure/free', 'exitTrim/secure/free'],
      'egress door',
      { egressRole: 'exitAccess' },
      'yes',
      { does: 'permit' },
    ),
    ['no egress to speak of', { egressRole: 'noOccupiedSpace' }, 'no', { on: 'mortiseLock/secure/free' }],
    ['role not known', {}, 'unknown', { on: 'mortiseLock/secure/free' }],
    ['fail safe is not in doubt', { egressRole: 'exitAccess' }, 'no', { on: 'mortiseLock/safe/free' }],
    [
      'a clinical lock is another matter',
      { egressRole: 'exitAccess' },
      'no',
      { on: 'mortiseLock/secure/clinical' },
    ],
    [
      'a fail-secure bolt holds people in',
      { egressRole: 'exitAccess' },
      'no',
      { on: 'boltMotor/secure/sensor' },
    ],
    [
      'a strike depends on the lockset with it',
      { egressRole: 'exitAccess' },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
  ),
});

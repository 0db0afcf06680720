import { under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const R144 = defineRule({
  id: 'R-144',
  title: 'An egress court takes no exterior-space lock',
  family: 'doors',
  book: 'ibc',
  cites: [under('egressCourts'), under('locksAndLatches')],
  confidence: 'secondary',
  why: 'The court is itself part of the way to the street, so nobody may be locked into it.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('egressRole', 'egressCourt'),
      of: { release: ['keyInside'] },
      says: 'The key lock that an occupied court or terrace may have is not for an egress court; people leave through it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'egressCourt'),
      says: 'A reviewer confirms the way through the egress court up to the public way, its gate included.',
    },
  ],
  cases: cases(
    [
      'key lock at an egress court',
      { egressRole: 'egressCourt' },
      'yes',
      { clause: 'a', on: 'mechanicalLock/none/keyInside', does: 'prohibit' },
    ],
    [
      'key gate lock at an egress court',
      { egressRole: 'egressCourt' },
      'yes',
      { clause: 'a', on: 'gateLock/secure/keyInside' },
    ],
    [
      'free lever at an egress court',
      { egressRole: 'egressCourt' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/free' },
    ],
    [
      'terrace that leads back inside',
      { egressRole: 'exteriorSpace' },
      'no',
      { clause: 'a', on: 'mechanicalLock/none/keyInside' },
    ],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'mechanicalLock/none/keyInside' }],
    ['egress court', { egressRole: 'egressCourt' }, 'yes', { clause: 'b', does: 'signOff must' }],
    ['terrace', { egressRole: 'exteriorSpace' }, 'no', { clause: 'b' }],
    ['role not known', {}, 'unknown', { clause: 'b' }],
  ),
});

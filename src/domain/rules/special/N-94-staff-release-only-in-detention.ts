import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

const on = 'detentionLock/none/attended';

export const N94 = defineRule({
  id: 'N-94',
  title: 'Detention release only in detention',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Place of the arrangement')],
  confidence: 'project',
  why: 'Only a place of custody may lock people in and leave their release to a guard.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(
        not(
          any(
            all(isKnown('roomUse'), is('roomUse', 'detention')),
            all(isKnown('occupancyGroup'), is('occupancyGroup', 'I-3')),
          ),
        ),
        no('isEgress'),
      ),
      of: { release: ['attended'] },
      says: 'This is not a place of detention, or no one leaves this way, so a lock that guards release is not offered.',
    },
  ],
  cases: cases(
    ['holding room', { roomUse: 'detention', occupancyGroup: 'B', egressRole: 'exitAccess' }, 'no', { on }],
    [
      'corridor of a prison',
      { roomUse: 'corridor', occupancyGroup: 'I-3', egressRole: 'exitAccess' },
      'no',
      { on },
    ],
    ['holding room, group not known', { roomUse: 'detention', egressRole: 'exitAccess' }, 'no', { on }],
    ['prison, room not known', { occupancyGroup: 'I-3', egressRole: 'exitAccess' }, 'no', { on }],
    [
      'office',
      { roomUse: 'office', occupancyGroup: 'B', egressRole: 'exitAccess' },
      'yes',
      { on, does: 'prohibit' },
    ],
    ['room and group not known', { egressRole: 'exitAccess' }, 'yes', { on }],
    ['office, group not known', { roomUse: 'office', egressRole: 'exitAccess' }, 'yes', { on }],
    ['business, room not known', { occupancyGroup: 'B', egressRole: 'exitAccess' }, 'yes', { on }],
    [
      'cabinet in a prison',
      { roomUse: 'corridor', occupancyGroup: 'I-3', egressRole: 'noOccupiedSpace' },
      'yes',
      { on },
    ],
    ['holding room, role not known', { roomUse: 'detention', occupancyGroup: 'I-3' }, 'unknown', { on }],
    [
      'a free lever is not meant',
      { roomUse: 'office', occupancyGroup: 'B' },
      'no',
      { on: 'mortiseLock/safe/free' },
    ],
  ),
});

import { text } from '../../codes/sections.ts';
import { all, is, no } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B78 = defineRule({
  id: 'B-78',
  title: 'An outdoor assembly group indoors',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check')],
  confidence: 'project',
  why: 'Group A-5 means outdoor stands.',
  clauses: [
    {
      effect: 'finding',
      field: 'occupancyGroup',
      severity: 'warn',
      when: all(
        is('occupancyGroup', 'A-5'),
        no('exterior'),
        is('roomUse', 'conference', 'classroom', 'courtroom', 'office', 'corridor'),
      ),
      says: 'Group A-5 is for outdoor stands, and this is an indoor room, {roomUse}; check the group.',
    },
  ],
  cases: cases(
    [
      'indoor room',
      { occupancyGroup: 'A-5', exterior: false, roomUse: 'conference' },
      'yes',
      { does: 'warn occupancyGroup' },
    ],
    ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'classroom' }, 'yes'],
    ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'courtroom' }, 'yes'],
    ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'office' }, 'yes'],
    ['indoor room', { occupancyGroup: 'A-5', exterior: false, roomUse: 'corridor' }, 'yes'],
    ['stands', { occupancyGroup: 'A-5', exterior: false, roomUse: 'site' }, 'no'],
    ['outdoors', { occupancyGroup: 'A-5', exterior: true, roomUse: 'conference' }, 'no'],
    ['hall', { occupancyGroup: 'A-3', exterior: false, roomUse: 'conference' }, 'no'],
    ['place not known', { occupancyGroup: 'A-5', roomUse: 'conference' }, 'unknown'],
  ),
});

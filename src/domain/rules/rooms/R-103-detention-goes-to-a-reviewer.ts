import { text, under } from '../../codes/sections.ts';
import { is } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R103 = defineRule({
  id: 'R-103',
  title: 'Detention goes to a reviewer',
  family: 'rooms',
  book: 'ibc',
  cites: [
    under('detentionLocking'),
    under('detentionUse'),
    text('nfpa101', 'chapters 22 and 23', 'Detention'),
  ],
  confidence: 'read',
  why: 'Detention has its own rules that no schedule decides.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: is('roomUse', 'detention'),
      says: 'People are held here; which lock and which release is never decided by this schedule.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'detention'),
      says: 'A reviewer names the release by hand and the release by sprinkler, alarm box or attended place.',
    },
  ],
});

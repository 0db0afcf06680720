import { under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101 } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const privateSpace = is('roomUse', 'unitBalcony', 'officeTerrace');

export const R148 = defineRule({
  id: 'R-148',
  title: 'Lock on the door to a private balcony or office terrace',
  family: 'uses',
  book: 'ibc',
  cites: [under('locksAndLatches')],
  confidence: 'memory',
  note: 'That IBC 2021 has such items was read; their wording is from general knowledge, so nothing is waved through here.',
  why: 'From the 2021 edition the code allows a private balcony door to be locked; before that the balcony was a space like any other.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'should',
      when: all(ibc({ from: 2021, readTo: 2024 }), privateSpace),
      says: 'This edition may allow a lock here that shuts out the person outside; a reviewer reads the two items on balconies and office terraces.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(any(ibc({ to: 2018 }), nfpa101()), privateSpace),
      says: 'No provision seen in the adopted code lets a person be locked out on this balcony or terrace; treat it as an occupied space that needs egress.',
    },
  ],
});

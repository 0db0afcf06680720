import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R97 = defineRule({
  id: 'R-97',
  title: 'Tenant entrance: an ordinary lock',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress')],
  confidence: 'secondary',
  why: 'A reader outside changes nothing as long as the lever inside always opens.',
  clauses: [
    {
      key: 'a',
      effect: 'permit',
      when: is('roomUse', 'suiteEntrance'),
      of: { release: ['free'] },
      says: 'A tenant entrance may be locked fail secure with a reader outside; the inside lever or bar is the entire means of egress, and no sensor, button or fire-alarm release is needed.',
    },
    {
      key: 'b',
      effect: 'caution',
      when: all(is('roomUse', 'suiteEntrance'), yes('fireRated')),
      says: 'The entrance is in a rated wall, so it is self-closing and stays latched whatever the lock does.',
    },
  ],
});

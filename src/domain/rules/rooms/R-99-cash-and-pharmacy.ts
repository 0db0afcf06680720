import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R99 = defineRule({
  id: 'R-99',
  title: 'Value in a room is no reason to lock people in',
  family: 'rooms',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('locksAndLatches')],
  confidence: 'read',
  why: 'Neither cash, drugs nor evidence is on the list of places that may be locked against egress.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('roomUse', 'cashRoom', 'pharmacy')),
      of: { release: ['credentialOut', 'buttonOnly', 'alarmOnly', 'none'] },
      says: 'What is kept in this room earns no exemption: people inside leave without card, code or bare button.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: is('roomUse', 'cashRoom', 'pharmacy'),
      of: { release: ['free'] },
      says: 'A fail-secure lock that always opens from inside is allowed; panic hardware is required only by occupant load.',
    },
  ],
});

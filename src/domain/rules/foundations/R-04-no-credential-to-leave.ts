import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R04 = defineRule({
  id: 'R-04',
  title: 'No card or code to leave',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('monitoredEgress'), under('freeEgressNfpa')],
  confidence: 'read',
  note: 'That the IBC has no general case for a credential to leave: second-hand. Staff-released containment, lobby release, detention and delayed egress whose reader only skips the delay are judged by their own rules.',
  why: 'A visitor, or anyone who lost a card, cannot leave: a credential is a key by another name.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { release: ['credentialOut'] },
      says: 'This lock asks for a card or code before it lets a person out, which is not allowed on a door people leave by.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'should',
      when: all(yes('isEgress'), is('readerSides', 'both')),
      of: { release: ['free', 'stairReentry'] },
      says: 'Readers stand on both sides, but lever or bar always open this door; the inside reader can only record who leaves. Confirm that this is what the owner wants.',
    },
  ],
});

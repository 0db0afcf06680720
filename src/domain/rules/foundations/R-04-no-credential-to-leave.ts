import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { onEach } from '../onEach.ts';
import { cases, defineRule } from '../rule.ts';

const toLeave = [
  'magnet/safe/credentialOut',
  'mortiseLock/secure/credentialOut',
  'cylindricalLock/safe/credentialOut',
];

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
  cases: cases(
    ...onEach(toLeave, 'room door, card to leave', { egressRole: 'exitAccess' }, 'yes', {
      clause: 'a',
      does: 'prohibit',
    }),
    ['cabinet', { egressRole: 'noOccupiedSpace' }, 'no', { clause: 'a', on: 'magnet/safe/credentialOut' }],
    ['role not known', {}, 'unknown', { clause: 'a', on: 'magnet/safe/credentialOut' }],
    ...onEach(
      ['mortiseLock/secure/free', 'magnet/safe/sensor', 'magnet/safe/controlled'],
      'no credential needed',
      { egressRole: 'exitAccess', readerSides: 'both' },
      'no',
      'a',
    ),
    ...onEach(
      ['mortiseLock/secure/free', 'exitTrim/safe/stairReentry', 'strikeRim/secure/free'],
      'readers on both sides, mechanical exit',
      { egressRole: 'exitAccess', readerSides: 'both' },
      'yes',
      { clause: 'b', does: 'signOff should' },
    ),
    [
      'reader outside only',
      { egressRole: 'exitAccess', readerSides: 'secure' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'inside reader only records',
      { egressRole: 'exitAccess', readerSides: 'recordOut' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'cabinet with two readers',
      { egressRole: 'noOccupiedSpace', readerSides: 'both' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'readers not known',
      { egressRole: 'exitAccess' },
      'unknown',
      { clause: 'b', on: 'mortiseLock/secure/free' },
    ],
    [
      'a magnet is not free',
      { egressRole: 'exitAccess', readerSides: 'both' },
      'no',
      { clause: 'b', on: 'magnet/safe/sensor' },
    ],
    [
      'card to leave is clause a',
      { egressRole: 'exitAccess', readerSides: 'both' },
      'no',
      { clause: 'b', on: 'mortiseLock/secure/credentialOut' },
    ],
  ),
});

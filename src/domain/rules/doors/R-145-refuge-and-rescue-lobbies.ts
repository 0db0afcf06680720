import { under } from '../../codes/sections.ts';
import { all, is, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const waiting = is('roomUse', 'areaOfRefuge', 'rescueElevatorLobby');

export const R145 = defineRule({
  id: 'R-145',
  title: 'No lock between people and an area of refuge or rescue stair',
  family: 'doors',
  book: 'ibc',
  cites: [under('accessibleEgress'), under('rescueElevators')],
  confidence: 'memory',
  note: 'From general knowledge; the refusals are on the safe side.',
  why: 'People who cannot use the stair wait here for assisted rescue.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(is('roomUse', 'areaOfRefuge'), not(is('egressRole', 'stairEntry'))),
      of: { not: { device: ['mechanicalLock'], release: ['free'] } },
      says: 'The entry to an area of refuge takes no lock, electric or keyed.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(waiting, is('egressRole', 'stairEntry')),
      of: { not: { release: ['free', 'stairReentry'] } },
      says: 'The door from a refuge or rescue lobby into the stair opens from the waiting side by one motion, always.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(is('roomUse', 'areaOfRefuge'), not(is('egressRole', 'stairEntry'))),
      items: ['passageFunction'],
      says: 'The entry side of the refuge stays free: passage function.',
    },
    {
      key: 'd',
      effect: 'require',
      when: waiting,
      items: ['twoWayCommunication'],
      says: 'The two-way communication system of the area stays, and nothing new may obscure it.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: waiting,
      says: 'A reviewer confirms that people can reach the area of refuge and the stair beyond it.',
    },
  ],
});

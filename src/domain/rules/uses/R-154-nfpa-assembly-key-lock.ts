import { under } from '../../codes/sections.ts';
import { all, any, atLeast, atMost, nfpa101, no, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const hall = all(nfpa101(), yes('isEgress'), yes('groupA'));
const within = all(hall, yes('mainDoor'), atMost('occupantLoad', 'keyLockAssemblyLoadNfpa'));

export const R154 = defineRule({
  id: 'R-154',
  title: 'Key lock on the main entrance of an assembly, NFPA 101',
  family: 'uses',
  book: 'nfpa101',
  cites: [under('assemblyKeyLockNfpa')],
  confidence: 'memory',
  note: 'The figure of 500, the wording of the sign and the key at hand are from general knowledge; where IBC is adopted as well, its 300 governs by its own rule.',
  why: 'One main entrance may be locked by key while nobody is inside, and no other door.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(hall, any(no('mainDoor'), over('occupantLoad', 'keyLockAssemblyLoadNfpa'))),
      of: { release: ['keyInside'] },
      says: 'A key lock on the egress side is for the main entrance of an assembly of 500 people or fewer.',
    },
    {
      key: 'b',
      effect: 'require',
      when: within,
      of: { release: ['keyInside'] },
      items: ['keyLockMainDoor', 'signKeyLockBuilding'],
      says: 'The lock shows that it is locked, the sign says that the door stays unlocked while the building is occupied, and the key is at hand for everyone inside.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(within, atLeast('occupantLoad', 'panicLoadNfpa')),
      of: { release: ['keyInside'] },
      items: ['panicHardware'],
      says: 'From 100 people on, any latch on this door is released by panic hardware.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: within,
      of: { release: ['keyInside'] },
      says: 'A reviewer confirms the key lock on the main entrance.',
    },
  ],
});

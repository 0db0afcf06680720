import { under } from '../../codes/sections.ts';
import { is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R60 = defineRule({
  id: 'R-60',
  title: 'Entry to the stair stays free',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('freeEgressIbc'), under('stairDoorsNfpa')],
  confidence: 'secondary',
  why: 'The stair is the exit; a floor that cannot get into it has lost its exit.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: is('egressRole', 'stairEntry'),
      of: { release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside', 'lobby'] },
      says: 'It keeps people on the floor from the stair, and no complete release arrangement stands in for the free lever.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'stairEntry'),
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'controlled', 'clinical', 'attended'] },
      says: 'It holds the door into the stair until something releases it: a reviewer confirms that the whole arrangement is there and that this use may have it.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'stairLockWanted',
      severity: 'warn',
      when: yes('floorSideToLock'),
      says: 'The owner wants the floor side of a stair door locked: entry to the stair must always be possible, so at most a delay or a whole release arrangement can serve.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, any, is, nfpa101, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const oldClause = all(
  yes('publicEntrance'),
  yes('cityKeepsPublicDisarm'),
  any(yes('groupA'), yes('groupE'), is('occupancyGroup', 'B', 'M')),
);
// The assembly chapter speaks of every door with this lock, not of the entrance alone.
const when = all(yes('isEgress'), any(oldClause, all(nfpa101(), yes('groupA'))));

export const R29 = defineRule({
  id: 'R-29',
  title: 'Sensor-released door off while the public is in',
  family: 'magnets',
  book: 'ibc',
  cites: [
    under('sensorRelease'),
    under('sensorReleaseNfpa'),
    text('nfpa101', '12.2.2.2.5', 'Assembly locking'),
  ],
  confidence: 'secondary',
  note: 'The old IBC clause was read and speaks of entrances; current editions no longer carry it, so it applies only where the city keeps it. That the NFPA 101 assembly chapter means every such door while the space is occupied: second-hand and general knowledge.',
  why: 'A crowd of strangers should not depend on a sensor at the door they came in by.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      items: ['publicHoursDisarm'],
      when,
      of: { release: ['sensor'] },
      says: 'The lock is switched off on the egress side as long as the public is in; under NFPA 101 an assembly space whenever anybody uses it.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when,
      of: { release: ['sensor'] },
      says: 'A reviewer confirms the hours and how the lock is switched off while the public is inside.',
    },
  ],
});

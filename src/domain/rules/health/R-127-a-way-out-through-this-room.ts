import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const through = all(yes('isEgress'), yes('othersLeaveThroughRoom'));

export const R127 = defineRule({
  id: 'R-127',
  title: 'Egress through this room stays open',
  family: 'health',
  book: 'ibc',
  cites: [under('interveningRooms'), text('nfpa101', '7.5.2', 'Impediments to egress')],
  confidence: 'read',
  note: 'NFPA 101 from general knowledge. Sensor and hardware release open for the person who comes, so they go to a reviewer; delayed egress and the elevator-lobby set are judged by their own rules.',
  why: 'An egress path may not lead through a room that someone can lock.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: through,
      of: {
        release: [
          'controlled',
          'clinical',
          'keyInside',
          'credentialOut',
          'buttonOnly',
          'alarmOnly',
          'attended',
          'none',
        ],
      },
      says: 'Others leave through this room, so its door may not be locked against them, even with fire-alarm release; give them another path or use a free-egress lock.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: through,
      of: { release: ['sensor', 'doorSwitch', 'delayed', 'lobby'] },
      says: 'Others leave through this room; a reviewer confirms that the lock releases for their direction of travel.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(through, not(isKnown('exitDirection'))),
      of: { release: ['free'], not: { family: ['none'] } },
      says: 'Others leave through this room. Where they come in by this door, people leave through it both ways and a lock against entry stops them: survey the direction.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'othersLeaveThroughRoom',
      severity: 'warn',
      when: all(
        yes('othersLeaveThroughRoom'),
        is('roomUse', 'multiToilet', 'singleToilet', 'storage', 'closet', 'kitchen'),
      ),
      says: 'A restroom, storage room, closet or kitchen may not serve as egress for other rooms; look for the intended path.',
    },
  ],
});

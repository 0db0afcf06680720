import { under } from '../../codes/sections.ts';
import { always, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R25 = defineRule({
  id: 'R-25',
  title: 'An electric bolt on an egress door: fail safe only, with a full release set',
  family: 'magnets',
  book: 'ibc',
  cites: [under('sensorRelease'), under('hardwareRelease'), under('unlatching')],
  confidence: 'secondary',
  why: 'No lever retracts this bolt, and a person leaning on the door can bind it even after it is released.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['bolt'], not: { release: ['sensor', 'doorSwitch'] } },
      says: 'An electric bolt on an egress door needs the full sensor set or a switch in the door hardware; this one has neither.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: yes('isEgress'),
      of: { family: ['bolt'], failMode: ['secure'] },
      says: 'This bolt stays thrown when power fails, so people would be locked in; on an egress door it must fail safe.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: yes('isEgress'),
      of: { family: ['bolt'], failMode: ['safe'], release: ['sensor', 'doorSwitch'] },
      says: 'A bolt can bind under side load; a reviewer must accept it here, and a lock with its own lever or bar is better.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: always,
      of: {
        family: ['bolt'],
        failMode: ['secure'],
        release: ['sensor', 'doorSwitch', 'buttonOnly', 'alarmOnly', 'lobby', 'controlled'],
      },
      says: 'What releases it breaks lock power, and a fail-secure bolt stays thrown without power: nothing here lets anyone out.',
    },
  ],
});

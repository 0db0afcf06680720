import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Rooms in which such systems are usual are asked about; elsewhere the fact counts when somebody recorded it. */
const flooded = any(
  all(
    is(
      'roomUse',
      'serverRoom',
      'modularDataCenter',
      'electricalRoom',
      'transformerVault',
      'batteryRoom',
      'equipment',
    ),
    yes('agentFlooded'),
  ),
  all(isKnown('agentFlooded'), yes('agentFlooded')),
);

export const R169 = defineRule({
  id: 'R-169',
  title: 'Rooms protected by a gaseous agent',
  family: 'uses',
  book: 'practice',
  cites: [
    text('practice', '', 'NFPA 2001, safety of people in clean-agent rooms'),
    text('practice', '', 'NFPA 12, safety of people in carbon dioxide rooms'),
  ],
  confidence: 'memory',
  note: 'Neither standard was read here. Outward swing and panic hardware are advice of their annexes.',
  why: 'The agent must stay in the room to put the fire out, and no one may stay in it.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(flooded, yes('isSwinging')),
      items: ['closer', 'gasketing'],
      says: 'The door closes by itself and fits tightly before the gas is let in, so it has a closer and seals, and nothing holds it open that the release does not let go.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: flooded,
      of: {
        release: [
          'delayed',
          'controlled',
          'clinical',
          'lobby',
          'keyInside',
          'credentialOut',
          'buttonOnly',
          'alarmOnly',
          'none',
        ],
      },
      says: 'People must leave this room at once and at all times, also while it is locked; this arrangement can keep them in the agent.',
    },
    {
      key: 'c',
      effect: 'signOff',
      grade: 'must',
      when: flooded,
      of: { release: ['sensor', 'doorSwitch'] },
      says: 'An electric release stands between people and the exit from a room protected by gas: a reviewer agrees, or a lever or bar that always opens takes its place.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'should',
      when: all(flooded, yes('isEgress')),
      says: 'Read the system’s standard and its listing for swing, panic hardware, signs and the time before discharge, which this schedule does not hold.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(flooded, yes('isSwinging'), no('swingsWithEgress')),
      says: 'The door swings into the room; where gas raises the pressure it is hard to pull, so outward swing is advised.',
    },
  ],
});

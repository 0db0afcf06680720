import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { alarmMayBeThere } from '../alarm/given.ts';
import { loneStairIbc } from './conditions.ts';

const lockedStair = all(is('egressRole', 'stairEntry'), not(loneStairIbc));

export const R56 = defineRule({
  id: 'R-56',
  title: 'Alarm and power loss free the stair side too; high-rise stairs have telephones',
  family: 'stairs',
  book: 'ibc',
  cites: [under('stairDoors'), under('highRiseStairs'), text('ibc', '403.5.3.1', 'Stairway communication')],
  confidence: 'secondary',
  note: 'That 2024 added alarm and power loss is secondary, its exact words were not seen; that it asks the alarm only where the area has one is from general knowledge. The telephones were read. A local text with the three triggers is entered as an amendment.',
  why: 'A release that waits for somebody to press a switch comes late; from 2024 the alarm and a dead supply do it as well.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: all(ibc({ from: 2024, readTo: 2024 }), lockedStair),
      of: { release: ['stairReentry'] },
      items: ['powerLossRelease'],
      says: 'Besides the switch, any loss of power to the lock frees the stair side.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(ibc({ from: 2024, readTo: 2024 }), lockedStair, alarmMayBeThere),
      of: { release: ['stairReentry'] },
      items: ['stairAlarmRelease'],
      says: 'Besides the switch, a fire alarm in the area the stair serves frees the stair side.',
    },
    {
      key: 'b',
      effect: 'require',
      when: all(ibc(), lockedStair, yes('highRise')),
      of: { release: ['stairReentry'] },
      items: ['stairPhones'],
      says: 'A telephone or intercom to an attended place stands in the stair at every fifth floor or closer.',
    },
  ],
});

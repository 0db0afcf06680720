import { text, under } from '../../codes/sections.ts';
import { all, any, no, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const B95 = defineRule({
  id: 'B-95',
  title: 'The plan says otherwise',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Spaces and openings of this project'), under('freeEgressIbc')],
  confidence: 'project',
  why: 'Spaces and openings show some facts of a door. Where the survey of the door says less, the plan governs until somebody corrects one of the two.',
  clauses: [
    {
      key: 'a',
      effect: 'finding',
      field: 'mainDoor',
      severity: 'warn',
      when: all(yes('planOnlyDoor'), no('mainDoor'), any(yes('groupA'), yes('wishDelayedEgress'))),
      says: 'The plan shows no other door that people leave this room by, so it is judged as the main door. Correct the survey or add the other door.',
    },
    {
      key: 'b',
      effect: 'finding',
      field: 'occupantLoad',
      severity: 'warn',
      when: yes('planLoadLarger'),
      says: 'The spaces that leave through this opening hold more people than its survey says. It is judged by the larger load, {occupantLoad}.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'occupancyGroup',
      severity: 'warn',
      when: yes('planGroupStricter'),
      says: 'The space served, or one that can be left only through it, belongs to another occupancy group by its use and load or by its other doors. This opening is judged as Group {occupancyGroup}.',
    },
    {
      key: 'd',
      effect: 'finding',
      field: 'roomAreaFt2',
      severity: 'warn',
      when: yes('planAreaDiffers'),
      says: 'The room has one area at this opening and another on the plan. The larger, {roomAreaFt2}, is used.',
    },
    {
      key: 'e',
      effect: 'finding',
      field: 'lobbyHasOtherExit',
      severity: 'warn',
      when: yes('planNoLobbyExit'),
      says: 'The survey gives this lobby another exit, or this door another part, and the plan shows no other exit of the lobby. It is judged as the door of a lobby without one.',
    },
    {
      key: 'f',
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: yes('planNoOtherDoor'),
      says: 'This opening is not counted as an exit, and the plan shows no other door for the people behind it. Enter the door they leave by.',
    },
    {
      key: 'g',
      effect: 'finding',
      field: 'occupantLoad',
      severity: 'warn',
      when: yes('planSpaceLoads'),
      says: 'The space behind this opening has one occupant load as given and another by its use and area. The larger governs. Correct the space.',
    },
  ],
});

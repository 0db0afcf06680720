import { text, under } from '../../codes/sections.ts';
import { any } from '../../logic/condition.ts';
import { panicTriggers } from '../../logic/derived.ts';
import { defineRule } from '../rule.ts';
import { electricalRoomClauses } from './electricalRooms.ts';

export const R76 = defineRule({
  id: 'R-76',
  title: 'Panic hardware for electrical rooms, vaults and battery rooms',
  family: 'panic',
  book: 'nec',
  cites: [
    under('panicHardware'),
    text('nec', '110.26(C)(3)', 'Personnel doors'),
    text('nec', '110.33(A)(3)', 'Personnel doors over 1,000 V'),
    text('nec', '450.43(C)', 'Transformer vault doors'),
    text('nec', '480.10', 'Battery rooms'),
  ],
  confidence: 'secondary',
  note: 'The IBC 2024 text was read; IBC 2021 and the NEC steps second-hand. The equipment counts in whatever room it stands, because the NEC names no room. Refusing magnets and bolts outright goes beyond the NEC: the IBC opens the case of a magnet beside the bar to Groups A and E only.',
  why: 'After an arc flash a person may be blinded and burned, and must be able to get out by falling against the door.',
  clauses: electricalRoomClauses(
    any(panicTriggers.electricalRoomAnyDistance, panicTriggers.electricalRoomNear),
  ),
});

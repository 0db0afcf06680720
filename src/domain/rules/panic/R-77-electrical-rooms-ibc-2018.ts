import { ofEdition } from '../../codes/sections.ts';
import { panicTriggers } from '../../logic/derived.ts';
import { defineRule } from '../rule.ts';
import { electricalRoomClauses } from './electricalRooms.ts';

export const R77 = defineRule({
  id: 'R-77',
  title: 'Electrical rooms under the IBC of 2018',
  family: 'panic',
  book: 'ibc',
  cites: [ofEdition('panicHardware', 2018)],
  confidence: 'read',
  note: 'With a current NEC also adopted, R-76 requires it from 800 A, and the stricter governs.',
  why: 'The 2018 building code sets the threshold higher and considers the width of the equipment.',
  clauses: electricalRoomClauses(panicTriggers.electricalRoomOldIbc),
});

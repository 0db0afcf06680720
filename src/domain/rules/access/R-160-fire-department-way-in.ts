import { text } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R160 = defineRule({
  id: 'R-160',
  title: 'Locked door on the fire department’s access route',
  family: 'access',
  book: 'ifc',
  cites: [text('ifc', '503.6, 504, 506', 'Fire department access and key boxes')],
  confidence: 'memory',
  why: 'The fire department must get in without forcing the door or losing minutes.',
  clauses: [
    {
      effect: 'caution',
      when: all(
        yes('fireDepartmentAccess'),
        any(yes('exterior'), is('doorType', 'gateSwing', 'gateSlide'), is('egressRole', 'dischargeGate')),
      ),
      says: 'The fire department comes in here; ask whether it wants a key box, its own key switch or a way to the stair.',
    },
  ],
});

import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R152 = defineRule({
  id: 'R-152',
  title: 'Panic hardware on a balanced door is a push pad',
  family: 'uses',
  book: 'ibc',
  cites: [under('panicHardware')],
  confidence: 'memory',
  note: 'Last part of the panic section in every edition adopted here.',
  why: 'A balanced leaf pivots about a point inside its width, so pushing near the hinge side does not open it.',
  clauses: [
    {
      effect: 'require',
      when: all(is('doorType', 'balanced'), yes('panicWithLock')),
      of: { exitDevice: true },
      items: ['pushPadDevice'],
      says: 'Only a push-pad device, its pad within the half of the leaf on the latch side.',
    },
  ],
});

import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R07 = defineRule({
  id: 'R-07',
  title: 'A reader outside adds no sensor, button or alarm release',
  family: 'foundations',
  book: 'ibc',
  cites: [under('freeEgressIbc'), under('sensorRelease')],
  confidence: 'secondary',
  why: 'Rules for locks that hold people in are often applied to doors that do not, at the owner’s cost and for no one’s safety.',
  clauses: [
    {
      effect: 'permit',
      when: all(yes('isEgress'), is('readerSides', 'secure')),
      of: { release: ['free'] },
      says: 'The reader controls entry only and the inside always opens, so no exit sensor, push button or fire-alarm release is needed for leaving.',
    },
  ],
});

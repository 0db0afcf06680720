import { text, under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B68 = defineRule({
  id: 'B-68',
  title: 'Sealed off, yet it looks like an exit',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('freeEgressIbc')],
  confidence: 'project',
  why: 'People run to what looks like an exit, whatever the plan says.',
  clauses: [
    {
      effect: 'finding',
      field: 'egressRole',
      severity: 'refuse',
      when: all(is('egressRole', 'sealedOff'), any(yes('exitSign'), yes('hasExitDevice'))),
      says: 'The door is said to be sealed off, but an exit sign or a push bar tells people to leave here; take them down or treat it as an exit.',
    },
  ],
  cases: cases(
    ['exit sign', { egressRole: 'sealedOff', exitSign: true, latch: 'bored', panicPresent: false }, 'yes'],
    ['push bar', { egressRole: 'sealedOff', exitSign: false, latch: 'rimExit', panicPresent: true }, 'yes'],
    ['neither', { egressRole: 'sealedOff', exitSign: false, latch: 'bored', panicPresent: false }, 'no'],
    ['exit', { egressRole: 'exteriorExit', exitSign: true, latch: 'rimExit', panicPresent: true }, 'no'],
    ['sign not looked for', { egressRole: 'sealedOff', latch: 'bored', panicPresent: false }, 'unknown'],
  ),
});

import { text } from '../../codes/sections.ts';
import { all, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const N01 = defineRule({
  id: 'N-01',
  title: 'A credential needs a lock that can read it',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A lock without electricity cannot answer to a reader.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      // At a sealed opening N-13 buys nothing that could read one.
      when: all(yes('wantsReader'), not(all(isKnown('egressRole'), is('egressRole', 'sealedOff')))),
      of: { family: ['mechanical', 'detention', 'none'] },
      says: 'A credential is to be read here, and this lock cannot be released by one.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('readerSides', 'none', 'secure'),
      of: { release: ['credentialOut'] },
      says: 'Nobody asked for a reader on the egress side, so no credential can let anybody out.',
    },
  ],
});

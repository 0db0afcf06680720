import { text } from '../../codes/sections.ts';
import { yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

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
      effect: 'prohibit',
      when: yes('wantsReader'),
      of: { family: ['mechanical', 'detention', 'none'] },
      says: 'A credential is to be read here, and this lock cannot be released by one.',
    },
  ],
  cases: cases(
    [
      'reader on the secure side',
      { readerSides: 'secure' },
      'yes',
      { on: 'mechanicalLock/none/free', does: 'prohibit' },
    ],
    ['readers on both sides', { readerSides: 'both' }, 'yes', { on: 'mechanicalLock/none/free' }],
    ['no lock answers nothing', { readerSides: 'secure' }, 'yes', { on: 'noLock/none/free' }],
    ['no reader wanted', { readerSides: 'none' }, 'no', { on: 'mechanicalLock/none/free' }],
    [
      'an electric strike answers to a reader',
      { readerSides: 'secure' },
      'no',
      { on: 'strikeMortise/secure/free' },
    ],
    ['a detention lock does not', { readerSides: 'secure' }, 'yes', { on: 'detentionLock/none/attended' }],
    ['not asked yet', {}, 'unknown', { on: 'mechanicalLock/none/free' }],
  ),
});

import { under } from '../../codes/sections.ts';
import { all, any, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const sallyport = all(yes('wishInterlock'), any(is('occupancyGroup', 'I-3'), is('roomUse', 'detention')));

export const R141 = defineRule({
  id: 'R-141',
  title: 'A detention sallyport is never decided here',
  family: 'doors',
  book: 'ibc',
  cites: [under('detentionUse')],
  confidence: 'secondary',
  why: 'The only interlock the building code names before 2027 is in detention, under its own rules.',
  clauses: [
    {
      key: 'a',
      effect: 'refer',
      when: sallyport,
      says: 'This is a detention sallyport; no device is recommended, and a reviewer decides it as a whole.',
    },
    {
      key: 'b',
      effect: 'require',
      when: sallyport,
      items: ['interlockOverride'],
      says: 'In an emergency both doors must be able to stand open together, so that people can pass straight through.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, over, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const dayCare = any(is('roomUse', 'dayCare'), is('occupancyGroup', 'I-4'));

export const R134 = defineRule({
  id: 'R-134',
  title: 'Day care',
  family: 'health',
  book: 'ibc',
  cites: [
    under('educationalLocking'),
    under('exitsRequired'),
    text('nfpa101', 'chapters 16 and 17', 'Day care'),
  ],
  confidence: 'memory',
  note: 'From general knowledge throughout.',
  why: 'Small children cannot operate unfamiliar hardware, and some are carried out.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: dayCare,
      of: { not: { release: ['free'] } },
      says: 'A reviewer signs for a day-care door that does not simply open by its lever or bar.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'note',
      when: dayCare,
      says: 'Children leave by this door: keep hardware plain, one motion, at the usual height.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(ibc(), dayCare, over('occupantLoad', 'dayCareSecondExitIbc')),
      says: 'A room with more than 10 children of two and a half years or less needs two exits.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(nfpa101(), dayCare),
      says: 'NFPA 101 requires that restroom doors open from outside and closets from inside, and panic hardware from 100 people.',
    },
    {
      key: 'e',
      effect: 'caution',
      when: all(is('roomUse', 'dayCare'), yes('groupE')),
      of: { release: ['delayed'] },
      says: 'Day care classified as Group E is not a classroom for the delayed-egress exception; only a center in I-4 is outside that limit.',
    },
  ],
});

import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Somebody asked to keep people in, or says what is treated here: then the need is a question and no “no”. */
const heldByWish = any(
  all(isKnown('wishControlledEgress'), yes('wishControlledEgress')),
  all(isKnown('clinicalArea'), not(is('clinicalArea', 'none'))),
);

export const N92 = defineRule({
  id: 'N-92',
  title: 'Clinical lock only with a recorded clinical need',
  family: 'special',
  book: 'project',
  cites: [text('project', '', 'Recorded need')],
  confidence: 'project',
  why: 'A lock that only staff open rests on a documented need.',
  clauses: [
    {
      effect: 'prohibit',
      when: any(
        all(not(isKnown('clinicalNeed')), not(heldByWish)),
        not(is('clinicalNeed', 'containment', 'securityThreat')),
        no('isEgress'),
      ),
      of: { release: ['clinical'] },
      says: 'No clinical need to keep people in is recorded here, or no one leaves this way, so a lock that only staff open is not offered.',
    },
  ],
});

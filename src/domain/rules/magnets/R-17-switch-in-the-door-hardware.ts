import { under } from '../../codes/sections.ts';
import { is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R17 = defineRule({
  id: 'R-17',
  title: 'Release by the door hardware breaks lock power directly',
  family: 'magnets',
  book: 'ibc',
  cites: [under('hardwareRelease')],
  confidence: 'read',
  note: 'The clause was read in the 2018 edition; later editions second-hand.',
  why: 'The person’s own hand on the bar or lever must release the lock at once, with no controller in between.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: yes('isEgress'),
      of: { release: ['doorSwitch'] },
      items: ['doorSwitchHardware', 'powerLossRelease', 'listedLock'],
      says: 'The bar or lever on the leaf, obvious in any light and operated with one hand, cuts lock power by its own switch; loss of power also unlocks.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is(
        'doorType',
        'slidingAutomatic',
        'folding',
        'revolving',
        'overhead',
        'grille',
        'gateSlide',
        'turnstile',
        'turnstileFull',
        'turnstileSecurity',
      ),
      of: { release: ['doorSwitch'] },
      says: 'There is no leaf here for a bar or lever with a switch, so this release cannot be provided.',
    },
  ],
});

import { text } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { hospitalCorridorDoor } from '../health/conditions.ts';
import { defineRule } from '../rule.ts';

export const N10 = defineRule({
  id: 'N-10',
  title: 'Where nothing is required nothing is bought',
  family: 'needs',
  book: 'project',
  cites: [text('project', '', 'Owner’s wish')],
  confidence: 'project',
  why: 'A push/pull leaf that no one wants locked and that need not latch works as it is.',
  clauses: [
    {
      effect: 'prohibit',
      when: all(
        is('latch', 'pushPull', 'roller'),
        any(is('readerSides', 'none'), all(isKnown('egressRole'), is('egressRole', 'sealedOff'))),
        is('workStatus', 'existing', 'altered'),
        is('securityNeed', 'low', 'medium'),
        not(any(yes('wishKeyLock'), yes('wishLockdown'), yes('fireRated'), hospitalCorridorDoor)),
      ),
      of: { family: ['mechanical', 'battery'] },
      says: 'No lock is requested on this leaf and nothing says that it must latch, so no lock is bought.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, any, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

export const R149 = defineRule({
  id: 'R-149',
  title: 'A storm shelter door stays as it was tested',
  family: 'uses',
  book: 'icc500',
  cites: [under('stormShelters'), text('icc500', '', 'Storm shelter doors')],
  confidence: 'secondary',
  why: 'Leaf, frame and hardware were impact tested as one assembly, and a changed part was not.',
  clauses: [
    {
      key: 'a',
      effect: 'require',
      when: is('roomUse', 'stormShelter'),
      items: ['testedShelterAssembly'],
      says: 'Only the tested assembly, electrified only as its listing shows; it locks from inside and still opens by one motion.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: is('roomUse', 'stormShelter'),
      of: { failMode: ['safe'], keepsLatch: false },
      says: 'Storms take out power, and this device would release the door.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(is('roomUse', 'stormShelter'), any(yes('wishUnlockOnAlarm'), yes('wishScheduledUnlock'))),
      says: 'A schedule or a fire alarm that unlocks the outside could open the shelter during the storm; a reviewer says how shelter mode stops it.',
    },
    {
      key: 'd',
      effect: 'signOff',
      grade: 'must',
      when: is('roomUse', 'stormShelter'),
      says: 'A reviewer compares every part with the listing of the shelter door.',
    },
    {
      key: 'e',
      effect: 'refer',
      when: all(
        is('roomUse', 'stormShelter'),
        not(all(isKnown('shelterListingSeen'), yes('shelterListingSeen'))),
      ),
      says: 'Nothing is decided until the listing of the shelter assembly has been seen: it alone says which lock the door may have.',
    },
  ],
});

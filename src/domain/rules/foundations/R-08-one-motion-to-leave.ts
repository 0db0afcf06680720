import { text, under } from '../../codes/sections.ts';
import { all, any, ibc, is, nfpa101, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { placeOfDetention } from './keyLocks.ts';

/** Second motions that other rules judge: unit entrances, bedrooms, old classrooms, detention. */
const judgedElsewhere = any(
  all(is('roomUse', 'dwellingEntrance'), is('occupancyGroup', 'R-1', 'R-2', 'R-3')),
  is('roomUse', 'dwellingBedroom'),
  all(nfpa101(), not(ibc()), is('roomUse', 'classroom'), is('workStatus', 'existing')),
  placeOfDetention,
);

export const R08 = defineRule({
  id: 'R-08',
  title: 'One motion opens the door',
  family: 'foundations',
  book: 'ibc',
  cites: [under('unlatching'), under('unlatchingNfpa'), text('osha', '1910.36(d)', 'Exit doors')],
  confidence: 'secondary',
  note: 'Second motions at unit entrances, bedrooms in units and existing classrooms are left to R-104, R-164 and R-102.',
  why: 'A frightened person, or one in smoke, tries one thing; a second bolt turns the door into a wall.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('latch', 'boredPlusDeadbolt'), not(judgedElsewhere)),
      of: { family: ['strike', 'magnet', 'bolt', 'delayed'] },
      says: 'This device leaves the latch and a separate deadbolt on the leaf, so leaving takes two operations; it must take one.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'locksmith',
      when: all(
        yes('isEgress'),
        any(
          is('existingArrangement', 'padlock'),
          all(
            any(
              is('latch', 'boredPlusDeadbolt'),
              is('existingArrangement', 'deadboltPlusLatch', 'slideBolt'),
            ),
            not(judgedElsewhere),
          ),
        ),
      ),
      says: 'Remove the second bolt, chain or padlock, or install a lock that retracts latch and bolt together with one turn of the lever.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: all(yes('isEgress'), is('latch', 'mortiseDeadbolt')),
      of: { family: ['strike', 'lock', 'battery', 'mechanical'], release: ['free'] },
      says: 'One motion: the inside lever must retract latch and deadbolt together. Throw the bolt and try it, and remove any thumbturn that has to be operated first.',
    },
  ],
});

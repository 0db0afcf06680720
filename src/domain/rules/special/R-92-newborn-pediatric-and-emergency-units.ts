import { under } from '../../codes/sections.ts';
import { all, is, nfpa101, no, not } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';
import { abductionExcuse, ofCare, protectiveUnit } from './conditions.ts';

export const R92 = defineRule({
  id: 'R-92',
  title: 'Newborn, pediatric and emergency units',
  family: 'special',
  book: 'ibc',
  cites: [under('controlledEgress'), under('controlledEgressNfpa')],
  confidence: 'secondary',
  note: 'The exception for nurseries was read in a text amended by a state. Beside NFPA 101 it is not offered, because its security-needs lock keeps automatic release. Sprinklers together with detection or an attended place: read in the federal form for NFPA 101 of 2012, for later editions from general knowledge.',
  why: 'Infants are stolen and children run, yet only one of these units is excused from automatic release.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: ofCare('clinicalArea', is('clinicalArea', 'nurseryObstetric', 'pediatric', 'emergency')),
      of: { release: ['controlled', 'clinical', 'delayed'] },
      says: 'A reviewer chooses between controlled egress, a security-needs lock and a delay with tags for this unit.',
    },
    {
      key: 'b',
      effect: 'permit',
      when: all(abductionExcuse, not(nfpa101())),
      of: { release: ['controlled'] },
      says: 'With a listed child-abduction system this door may do without automatic release, release on power loss, remote switch and the one-door limit.',
    },
    {
      key: 'c',
      effect: 'caution',
      when: is('clinicalArea', 'pediatric', 'emergency'),
      of: { release: ['controlled'] },
      says: 'Pediatric and emergency units have no exception: the full set with automatic release applies, whatever system tags the children.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(is('clinicalArea', 'nurseryObstetric'), no('abductionSystem')),
      of: { release: ['controlled'] },
      says: 'Without a listed child-abduction system the nursery has no exception, so the full set applies.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(nfpa101(), protectiveUnit, no('fullSprinklers')),
      of: { release: ['controlled', 'clinical'] },
      says: 'NFPA 101 lets these patients be kept in only where sprinklers protect the whole building, and here they do not.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: all(nfpa101(), protectiveUnit, is('lockedUnitWatch', 'neither')),
      of: { release: ['controlled', 'clinical'] },
      says: 'NFPA 101 wants smoke detection throughout the locked unit, or a place in it that is always attended and opens the locks; there is neither.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { all, any, is, isKnown, no, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** An approval nobody has shown does not count; a work status nobody entered leaves the question open. */
const inPlace = all(yes('fireRated'), is('workStatus', 'existing', 'altered'));
const approved = all(isKnown('fieldModificationApproved'), yes('fieldModificationApproved'));
/** Each part under its own label: what the frame was made for says nothing of the leaf, nor of the other leaf. */
/** A frame without a cutout was not made with one: nobody is asked that again. */
const frameUncut = all(
  inPlace,
  not(approved),
  any(no('framePrepared'), all(not(isKnown('framePrepared')), is('strikePrep', 'none', 'residential'))),
);
const leafUncut = all(inPlace, no('leafPrepared'), not(approved));
const otherLeafUncut = all(inPlace, no('inactiveLeafPrepared'), not(approved));
/** Without a mullion the strike of a pair sits in the edge of the other leaf. */
const strikeInOtherLeaf = all(yes('isPair'), no('mullion'));
const anythingIsCut = any(
  no('framePrepared'),
  no('leafPrepared'),
  all(yes('isPair'), no('inactiveLeafPrepared')),
  no('leafRaceway'),
);
/** Wired devices that need a pocket, a bore or a wire way; the rest is screwed to the surface. */
const cuttingDevices = { wired: true, not: { device: ['magnet', 'delayedMagnet', 'strikeRim'] } } as const;

export const R39 = defineRule({
  id: 'R-39',
  title: 'A labeled leaf or frame in place is not cut on site',
  family: 'fire',
  book: 'nfpa80',
  cites: [
    text('nfpa80', '5.1.5.2', 'Field modifications'),
    text('nfpa80', '4.1.3', 'Preparation on site'),
    under('openingProtectives'),
  ],
  confidence: 'secondary',
  note: 'Each part is judged by its own label. What each device needs cut is trade practice. Clause numbers of NFPA 80 are from general knowledge and moved between editions.',
  why: 'The label covers the door as it was made; a pocket or raceway cut later voids it unless the listing laboratory approved it first.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(frameUncut, not(strikeInOtherLeaf), not(is('strikePrep', 'ansi478'))),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The strike needs a pocket cut into the labeled frame; only a laboratory’s approval, or a labeled frame made with the cutout, lifts this.',
    },
    {
      key: 'j',
      effect: 'prohibit',
      when: all(otherLeafUncut, strikeInOtherLeaf),
      of: { device: ['strikeMortise', 'strikeCylindrical'] },
      says: 'The strike would go in the edge of the inactive labeled leaf, with a raceway to it, and that leaf was not made that way; use a lock in the active leaf, or a labeled leaf made with the pocket.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(leafUncut, not(is('latch', 'mortise', 'mortiseDeadbolt'))),
      of: { device: ['mortiseLock'] },
      says: 'This labeled leaf has no mortise pocket: a mortise lock needs a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'c',
      effect: 'prohibit',
      when: all(leafUncut, not(is('latch', 'bored', 'boredPlusDeadbolt'))),
      of: { device: ['cylindricalLock'] },
      says: 'This labeled leaf is not bored for a cylindrical lock: it needs a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(leafUncut, is('latch', 'pushPull', 'roller')),
      of: { family: ['battery', 'mechanical'] },
      says: 'This labeled leaf has no preparation for a lock; boring or mortising it takes a new labeled leaf or a laboratory’s approval.',
    },
    {
      key: 'e',
      effect: 'prohibit',
      when: all(inPlace, not(approved), no('leafRaceway')),
      of: { transfer: true },
      says: 'This labeled leaf has no raceway, and coring one on site voids the label unless the laboratory approved it first.',
    },
    {
      key: 'f',
      effect: 'prohibit',
      when: all(leafUncut, no('hasExitDevice')),
      of: { device: ['delayedExitDevice'] },
      says: 'The bar would replace a lock whose preparation the label does not allow to be filled: use a labeled leaf made for the bar.',
    },
    {
      key: 'g',
      effect: 'prohibit',
      when: all(inPlace, not(approved)),
      of: { device: ['shearMagnet'] },
      says: 'A shear magnet needs pockets in head and leaf, and this labeled door was not made with them.',
    },
    {
      key: 'h',
      effect: 'require',
      when: all(inPlace, approved, anythingIsCut),
      of: cuttingDevices,
      items: ['laboratoryApproval'],
      says: 'The laboratory’s letter names this door and this cut, and is on hand before anyone cuts.',
    },
    {
      key: 'i',
      effect: 'signOff',
      grade: 'must',
      when: all(inPlace, approved, anythingIsCut),
      of: cuttingDevices,
      says: 'A labeled door is cut on the laboratory’s approval: a reviewer reads it before issue.',
    },
  ],
});

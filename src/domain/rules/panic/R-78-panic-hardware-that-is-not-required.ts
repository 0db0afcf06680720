import { under as cite } from '../../codes/sections.ts';
import { all, any, atLeast, ibc, is, no, not, under, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** An egress leaf that swings, has no bar and needs none: where people would look for one it is said why not. */
const bareEgress = all(yes('isEgress'), yes('isSwinging'), no('hasExitDevice'), no('panicRequired'));

export const R78 = defineRule({
  id: 'R-78',
  title: 'Panic hardware that is not required',
  family: 'panic',
  book: 'ibc',
  cites: [cite('freeEgressIbc'), cite('unlatching'), cite('locksAndLatches'), cite('panicHardware')],
  confidence: 'secondary',
  why: 'People trust a bar they can see; one that does not open the door is worse than none.',
  clauses: [
    {
      key: 'a',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      says: 'None of the rules checked here requires the bar on this door. As long as it is there, one push must open the door.',
    },
    {
      key: 'b',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired'), yes('mainDoor')),
      of: { release: ['keyInside'] },
      says: 'A key lock beside a push bar on the main door: a reviewer must accept it, because the bar does nothing while the key has locked the door.',
    },
    {
      key: 'c',
      effect: 'finding',
      field: 'existingArrangement',
      severity: 'warn',
      when: all(
        yes('isEgress'),
        yes('hasExitDevice'),
        no('panicRequired'),
        is('existingArrangement', 'deadboltPlusLatch', 'padlock', 'slideBolt', 'doubleCylinder', 'barricade'),
      ),
      says: 'Something else locks the door beside its push bar today, so a push on the bar does not open it; have it removed.',
    },
    {
      key: 'd',
      effect: 'caution',
      when: all(yes('isEgress'), yes('hasExitDevice'), no('panicRequired')),
      of: { release: ['sensor'] },
      says: 'The bar alone would not release this lock; give the bar its own switch, because people will push it and nothing else.',
    },
    {
      key: 'e',
      effect: 'permit',
      when: all(bareEgress, ibc(), any(yes('groupA'), yes('groupE')), under('occupantLoad', 'panicLoadIbc')),
      says: 'A lever is enough under the rules checked here: panic hardware is required in this group from 50 people, and the door serves {occupantLoad}.',
    },
    {
      key: 'f',
      effect: 'permit',
      when: all(
        bareEgress,
        not(any(yes('groupA'), yes('groupE'), yes('groupH'))),
        atLeast('occupantLoad', 'panicLoadIbc'),
      ),
      says: 'A lever is enough under the rules checked here: {occupantLoad} in {occupancyGroup} does not require panic hardware; assembly, schools, day care and high hazard do.',
    },
    {
      key: 'g',
      effect: 'permit',
      when: all(bareEgress, ibc({ to: 2018 }), is('roomUse', 'refrigerationMachinery')),
      says: 'The 2018 edition does not require panic hardware at refrigeration machinery rooms; later editions do, over 1,000 ft².',
    },
    {
      key: 'h',
      effect: 'permit',
      when: all(bareEgress, is('roomUse', 'electricalRoom')),
      says: 'The equipment entered is too small, or too far from the door, for the panic hardware of electrical rooms.',
    },
  ],
});

import { text, under } from '../../codes/sections.ts';
import { any } from '../../logic/condition.ts';
import { doing } from '../doing.ts';
import { cases, defineRule } from '../rule.ts';
import { unlawfulLockCases } from './unlawfulLockCases.ts';
import {
  alarmOnly,
  barricade,
  buttonBeforeBar,
  buttonOnly,
  cardToExit,
  chained,
  doubleCylinder,
  electricBolt,
  failSafeStrike,
  heldInHighHazard,
  magnetWithoutBar,
  sensorBesideBar,
  stairSide,
  twoMotions,
} from './unlawfulLocks.ts';

const warning = { effect: 'finding', field: 'existingArrangement', severity: 'warn' } as const;

export const R165 = defineRule({
  id: 'R-165',
  title: 'A lock found today that the rules here forbid',
  family: 'access',
  book: 'project',
  cites: [
    text('project', '', 'A forbidden lock in use is reported'),
    under('freeEgressIbc'),
    under('freeEgressNfpa'),
  ],
  confidence: 'project',
  note: 'Each clause rests on the rule it names; where that rule has an exception the clause keeps it.',
  why: 'Whoever sees that people cannot get out must say so at once, whatever is ordered for later.',
  clauses: [
    {
      key: 'a',
      ...warning,
      when: doubleCylinder,
      says: 'The lock found here needs a key to leave, which R-12 forbids on this door; make it safe today.',
    },
    {
      key: 'b',
      ...warning,
      when: twoMotions,
      says: 'Latch and bolt found here take two motions to leave, which R-08 forbids; make it safe today.',
    },
    {
      key: 'c',
      ...warning,
      when: chained,
      says: 'A chain, padlock or slide bolt was found on a way out, which R-08 forbids; take it off today.',
    },
    {
      key: 'd',
      ...warning,
      when: barricade,
      says: 'A barricade device was found on a way out, which R-101 forbids; take it off today.',
    },
    {
      key: 'e',
      ...warning,
      when: buttonOnly,
      says: 'The magnet found here opens by a button alone, which R-03 forbids; make it safe today.',
    },
    {
      key: 'f',
      ...warning,
      when: alarmOnly,
      says: 'The magnet found here opens on fire alarm only, which R-02 forbids; make it safe today.',
    },
    {
      key: 'g',
      ...warning,
      when: failSafeStrike,
      says: 'A fail-safe strike was found on a fire door, which R-31 forbids; the door does not stay latched when power fails.',
    },
    {
      key: 'h',
      ...warning,
      when: cardToExit,
      says: 'A card or code is needed to leave here, which R-04 forbids; make it safe today.',
    },
    {
      key: 'i',
      ...warning,
      when: buttonBeforeBar,
      says: 'The bar found here works only after a button is pressed, which R-80 forbids; make it safe today.',
    },
    {
      key: 'j',
      ...warning,
      when: electricBolt,
      says: 'An electric bolt was found on a way out; R-25 forbids it unless a full release set stands around it, so look for sensor, button and alarm release.',
    },
    {
      key: 'k',
      ...warning,
      when: stairSide,
      says: 'The stair side was found locked with no release, which R-59 forbids at entries and R-61 at the way out of the stair; make it safe today.',
    },
    {
      key: 'l',
      effect: 'signOff',
      grade: 'must',
      when: any(
        doubleCylinder,
        twoMotions,
        chained,
        barricade,
        buttonOnly,
        alarmOnly,
        failSafeStrike,
        cardToExit,
        buttonBeforeBar,
        electricBolt,
        stairSide,
        heldInHighHazard,
        magnetWithoutBar,
      ),
      says: 'The lock found today is one the rules here forbid. A reviewer hears of it now, apart from what is recommended.',
    },
    {
      key: 'm',
      ...warning,
      when: heldInHighHazard,
      says: 'A lock that holds people was found in a high-hazard space, where R-19 and R-70 allow none, whatever releases it; make it safe today.',
    },
    {
      key: 'n',
      ...warning,
      when: magnetWithoutBar,
      says: 'A magnet was found on a door for {occupantLoad} that has no push bar; no lock or latch but panic hardware may hold it (R-69, R-71), so make it safe today.',
    },
    {
      key: 'o',
      effect: 'signOff',
      grade: 'note',
      when: sensorBesideBar,
      says: 'A sensor-released magnet stands beside the panic hardware this door needs, which R-18 does not allow for new work; ask the authority whether it may stay as it is.',
    },
  ],
  cases: cases(
    ...doing(
      {
        a: 'warn existingArrangement',
        b: 'warn existingArrangement',
        c: 'warn existingArrangement',
        d: 'warn existingArrangement',
        e: 'warn existingArrangement',
        f: 'warn existingArrangement',
        g: 'warn existingArrangement',
        h: 'warn existingArrangement',
        i: 'warn existingArrangement',
        j: 'warn existingArrangement',
        k: 'warn existingArrangement',
        l: 'signOff must',
        m: 'warn existingArrangement',
        n: 'warn existingArrangement',
        o: 'signOff note',
      },
      [...unlawfulLockCases],
    ),
  ),
});

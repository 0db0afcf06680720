import { text, under } from '../../codes/sections.ts';
import { all, is, isKnown, not, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

/** Accepted and said so; a missing answer counts as no. */
const dispersal = all(isKnown('safeDispersalArea'), yes('safeDispersalArea'));

export const R66 = defineRule({
  id: 'R-66',
  title: 'A gate in the exit discharge is an egress door',
  family: 'stairs',
  book: 'ibc',
  cites: [under('gates'), under('egressCourts'), text('ibc', '1028.5', 'Access to a public way')],
  confidence: 'secondary',
  note: 'The four conditions of a safe dispersal area were read second-hand; the building check holds the area of the yard against them. Height of hardware and panic hardware at the gate follow the rules for doors; R-142 adds what is special to gates.',
  why: 'Egress ends at the street, not at the building wall; a locked gate keeps everyone in the yard.',
  clauses: [
    {
      key: 'a',
      effect: 'signOff',
      grade: 'must',
      when: is('egressRole', 'dischargeGate'),
      says: 'The gate belongs to the exit: a reviewer confirms that one motion opens it, or that an area inside the fence is accepted as safe.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: all(is('egressRole', 'dischargeGate'), not(dispersal)),
      of: { release: ['none', 'alarmOnly', 'buttonOnly', 'credentialOut', 'keyInside'] },
      says: 'People cannot open this gate by one motion without key, card or button, and no safe area inside the fence is on record.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(is('egressRole', 'dischargeGate'), yes('safeDispersalArea')),
      items: ['ahjApproval'],
      says: 'The authority’s acceptance of the safe area inside the fence is kept with the schedule: 5 ft² for each person, at least 50 ft from the building and on the same lot, kept clear and marked.',
    },
  ],
});

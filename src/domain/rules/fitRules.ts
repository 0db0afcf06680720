import { text } from '../codes/sections.ts';
import { deviceIds } from '../devices/devices.ts';
import { midSentence } from '../text/midSentence.ts';
import { yes } from '../logic/condition.ts';
import type { Clause, Rule } from './rule.ts';
import { type FitRow, fitCell, neverOnRatedDoor } from '../fit/matrix.ts';

/** A row of the fit table, spoken of in a decision like any other rule. */
export function fitClause(row: FitRow): Clause {
  const device = deviceIds.filter((id) => fitCell(row, id).verdict === 'no');
  return {
    effect: 'prohibit',
    when: row.when,
    of: { device },
    says: `It does not fit this opening as it is (${midSentence(row.name)}).`,
  };
}

export function fitRule(row: FitRow): Rule {
  return {
    id: `FIT-${String(row.row).padStart(2, '0')}`,
    title: row.name,
    family: 'fit',
    book: 'practice',
    cites: [text('practice', '', 'Fit of device to door, frame and latch')],
    confidence: 'practice',
    why: 'A device needs a place in the door or frame and something to act on.',
    clauses: [fitClause(row)],
  };
}

export const ratedFitClause: Clause = {
  effect: 'prohibit',
  when: yes('fireRated'),
  of: { device: neverOnRatedDoor },
  says: 'It is not made with a label for fire doors, or is not a latch that a fire door may rely on.',
};

export const ratedFitRule: Rule = {
  id: 'FIT-22',
  title: 'Devices that never serve a rated door',
  family: 'fit',
  book: 'practice',
  cites: [text('nfpa80', '6.4.4', 'Labeled latching hardware'), text('practice', '', 'Fit table')],
  confidence: 'practice',
  why: 'Only labeled latching hardware may serve a fire door.',
  clauses: [ratedFitClause],
};

import { under } from '../../codes/sections.ts';
import { all, is, yes } from '../../logic/condition.ts';
import { defineRule } from '../rule.ts';

const folding = all(yes('isEgress'), is('doorType', 'folding'));

export const R139 = defineRule({
  id: 'R-139',
  title: 'Special-purpose sliding, accordion and folding doors',
  family: 'doors',
  book: 'ibc',
  cites: [under('foldingDoors')],
  confidence: 'secondary',
  note: 'Read in part under an older section number; forces and standby power as remembered.',
  why: 'A horizontal folding door serves as egress only as the tested, power-operated unit it was sold as.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(folding, yes('groupH')),
      says: 'A folding or accordion door may not serve the egress from a high-hazard space.',
    },
    {
      key: 'b',
      effect: 'prohibit',
      when: folding,
      of: { not: { device: ['mechanicalLock'], release: ['free'] } },
      says: 'No lock is added to a folding door in a means of egress; it opens only as the unit was listed.',
    },
    {
      key: 'c',
      effect: 'require',
      when: folding,
      items: ['openByHand', 'operatorStandbyPower'],
      says: 'It is power operated with supervised standby power, opens by hand when power fails, starts with 30 lbf or less and opens with 15 lbf or less, also while people push against it.',
    },
    {
      key: 'd',
      effect: 'require',
      when: all(folding, yes('fireRated')),
      items: ['smokeClosing'],
      says: 'The rated folding door closes by itself on smoke detection.',
    },
    {
      key: 'e',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(folding, is('operator', 'none')),
      says: 'A folding door without an operator cannot serve as egress; provide a power-operated one or a side-hinged door.',
    },
    {
      key: 'f',
      effect: 'signOff',
      grade: 'must',
      when: folding,
      says: 'A reviewer confirms the listing of the folding door for egress.',
    },
  ],
});

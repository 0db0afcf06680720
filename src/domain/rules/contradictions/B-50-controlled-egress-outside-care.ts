import { text, under } from '../../codes/sections.ts';
import { all, ibc, is, not, yes } from '../../logic/condition.ts';
import { cases, defineRule } from '../rule.ts';

export const B50 = defineRule({
  id: 'B-50',
  title: 'Controlled egress wanted outside health care',
  family: 'contradictions',
  book: 'project',
  cites: [text('project', '', 'Survey check'), under('controlledEgress')],
  confidence: 'project',
  note: 'NFPA 101 alone leaves some other chapters open, so this applies where the IBC is adopted; detention has its own rules.',
  why: 'Only people whose care requires it may be kept behind a door that staff open.',
  clauses: [
    {
      effect: 'finding',
      field: 'wishControlledEgress',
      severity: 'warn',
      when: all(
        ibc(),
        yes('wishControlledEgress'),
        not(is('occupancyGroup', 'I-1.1', 'I-1.2', 'I-2', 'I-3')),
      ),
      says: 'Controlled egress is wanted in {occupancyGroup}, where people may not be kept in; check the group or withdraw the request.',
    },
  ],
  cases: cases(
    [
      'office or day care',
      { wishControlledEgress: true, occupancyGroup: 'B' },
      'yes',
      { does: 'warn wishControlledEgress' },
    ],
    ['office or day care', { wishControlledEgress: true, occupancyGroup: 'I-4' }, 'yes'],
    ['office or day care', { wishControlledEgress: true, occupancyGroup: 'R-4' }, 'yes'],
    ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-1.1' }, 'no'],
    ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-1.2' }, 'no'],
    ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-2' }, 'no'],
    ['care or detention', { wishControlledEgress: true, occupancyGroup: 'I-3' }, 'no'],
    ['not wanted', { wishControlledEgress: false, occupancyGroup: 'B' }, 'no'],
    [
      'NFPA 101 alone',
      { wishControlledEgress: true, occupancyGroup: 'B' },
      'no',
      { basis: { ibc: null, nfpa101: 2021 } },
    ],
    ['group not known', { wishControlledEgress: true }, 'unknown'],
  ),
});

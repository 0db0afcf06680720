import { cases } from '../rule.ts';

export const R162Cases = cases(
  [
    'federally paid clinic',
    { federalHealthCare: true, occupancyGroup: 'B' },
    'yes',
    { does: 'signOff should' },
  ],
  ['hospital, payer not asked', { occupancyGroup: 'I-2' }, 'yes'],
  ['private hospital', { federalHealthCare: false, occupancyGroup: 'I-2' }, 'no'],
  ['office', { federalHealthCare: false, occupancyGroup: 'B' }, 'no'],
  ['nothing known', {}, 'unknown'],
);

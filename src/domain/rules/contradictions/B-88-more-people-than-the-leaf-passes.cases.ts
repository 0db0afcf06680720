import { type CaseRow, cases } from '../rule.ts';

const leaf = { egressRole: 'exitAccess', doorType: 'single', leafWidthIn: 36 } as const;

export const B88Cases = cases(
  ...(['single', 'balanced', 'doubleActing'] as const).flatMap((doorType): readonly CaseRow[] => [
    ['36 in, 241 people', { ...leaf, doorType, occupantLoad: 241 }, 'yes', { does: 'warn occupantLoad' }],
    ['36 in, 240 people', { ...leaf, doorType, occupantLoad: 240 }, 'no'],
    ['48 in, 321 people', { ...leaf, doorType, leafWidthIn: 48, occupantLoad: 321 }, 'yes'],
    ['48 in, 320 people', { ...leaf, doorType, leafWidthIn: 48, occupantLoad: 320 }, 'no'],
  ]),
  ['just over 36 in, 241 people', { ...leaf, leafWidthIn: 36.0625, occupantLoad: 241 }, 'no'],
  ['wider than 48 in', { ...leaf, leafWidthIn: 48.0625, occupantLoad: 900 }, 'no'],
  ['pair of 36 in, 481 people', { ...leaf, doorType: 'pair', occupantLoad: 481 }, 'yes'],
  ['pair of 36 in, 480 people', { ...leaf, doorType: 'pair', occupantLoad: 480 }, 'no'],
  [
    'pair just over 36 in, 481 people',
    { ...leaf, doorType: 'pair', leafWidthIn: 36.0625, occupantLoad: 481 },
    'no',
  ],
  ['pair of 48 in, 641 people', { ...leaf, doorType: 'pair', leafWidthIn: 48, occupantLoad: 641 }, 'yes'],
  ['pair of 48 in, 640 people', { ...leaf, doorType: 'pair', leafWidthIn: 48, occupantLoad: 640 }, 'no'],
  ['pair wider than 48 in', { ...leaf, doorType: 'pair', leafWidthIn: 60, occupantLoad: 900 }, 'no'],
  ['pair just over 48 in', { ...leaf, doorType: 'pair', leafWidthIn: 48.0625, occupantLoad: 900 }, 'no'],
  ['sliding door', { ...leaf, doorType: 'slidingAutomatic', occupantLoad: 900 }, 'no'],
  ['cabinet', { ...leaf, egressRole: 'noOccupiedSpace', occupantLoad: 900 }, 'no'],
  ['load not known', { ...leaf }, 'unknown'],
);

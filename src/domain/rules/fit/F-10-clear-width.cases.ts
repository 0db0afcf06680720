import { type CaseRow, cases } from '../rule.ts';

export const F10Cases = cases(
  ...(['a', 'b'] as const).flatMap((clause): readonly CaseRow[] => {
    const doorType = clause === 'a' ? 'single' : 'turnstile';
    return [
      [
        'egress door, just under',
        { doorType, egressRole: 'exitAccess', clearWidthIn: 31.99 },
        'yes',
        { clause, does: 'warn clearWidthIn' },
      ],
      [
        'egress door, exactly 32 in',
        { doorType, egressRole: 'exitAccess', clearWidthIn: 32 },
        'no',
        { clause },
      ],
      [
        'accessible route without egress',
        { doorType, egressRole: 'noOccupiedSpace', accessibleRoute: true, clearWidthIn: 30 },
        'yes',
        { clause },
      ],
      [
        'neither',
        { doorType, egressRole: 'noOccupiedSpace', accessibleRoute: false, clearWidthIn: 30 },
        'no',
        { clause },
      ],
      [
        'the other kind of door',
        { doorType: clause === 'a' ? 'turnstile' : 'single', egressRole: 'exitAccess', clearWidthIn: 30 },
        'no',
        { clause },
      ],
      ['not measured', { doorType, egressRole: 'exitAccess' }, 'unknown', { clause }],
    ];
  }),
  [
    'pair, 31 in from the active leaf',
    { egressRole: 'exitAccess', doorType: 'pair', inactiveBolts: 'manualFlush', clearWidthIn: 31 },
    'yes',
    { clause: 'a' },
  ],
);

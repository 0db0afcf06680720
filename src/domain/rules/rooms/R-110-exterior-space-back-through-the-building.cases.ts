import { onEach } from '../onEach.ts';
import { cases, type CaseRow, type RuleCase } from '../rule.ts';
import { without } from '../without.ts';

const on = 'mechanicalLock/none/keyInside';

const terrace = { egressRole: 'exteriorSpace', occupantLoad: 300, roomUse: 'other' } as const;

const free = 'mortiseLock/secure/free';

/** The same space on a roof, which counts only while people use the roof. */
function onRoof(
  clause: string,
  also: { readonly occupantLoad?: number } = {},
  basis: RuleCase['basis'] = {},
): readonly CaseRow[] {
  const roof = { ...terrace, ...also, egressRole: 'roofDoor', roofUse: 'occupied' } as const;
  const at = { clause, on, basis };
  return [
    ['roof terrace', roof, 'yes', at],
    ['roof nobody uses', { ...roof, roofUse: 'unoccupied' }, 'no', at],
    ['room door, roof used', { ...roof, egressRole: 'exitAccess' }, 'no', at],
  ];
}

export const R110Cases = cases(
  ['terrace, IBC 2018', terrace, 'yes', { clause: 'a', on, basis: { ibc: 2018 }, does: 'prohibit' }],
  ['terrace, IBC 2021', terrace, 'no', { clause: 'a', on }],
  ['terrace, IBC 2024', terrace, 'no', { clause: 'a', on, basis: { ibc: 2024 } }],
  ['terrace, NFPA 101 alone', terrace, 'yes', { clause: 'a', on, basis: { ibc: null, nfpa101: 2021 } }],
  ['terrace, both books', terrace, 'yes', { clause: 'a', on, basis: { nfpa101: 2021 } }],
  [
    'corridor door, IBC 2018',
    { ...terrace, egressRole: 'exitAccess' },
    'no',
    { clause: 'a', on, basis: { ibc: 2018 } },
  ],
  ['role not known, IBC 2018', {}, 'unknown', { clause: 'a', on, basis: { ibc: 2018 } }],
  ['a free lever, IBC 2018', terrace, 'no', { clause: 'a', on: free, basis: { ibc: 2018 } }],
  ...onRoof('a', {}, { ibc: 2018 }),
  ...onRoof('b', { occupantLoad: 301 }),
  ...onRoof('c'),
  ...onRoof('d'),
  ...onRoof('e', {}, { nfpa101: 2021 }),
  ['terrace for 301', { ...terrace, occupantLoad: 301 }, 'yes', { clause: 'b', on, does: 'prohibit' }],
  ['terrace for 300', terrace, 'no', { clause: 'b', on }],
  [
    'terrace for 301, IBC 2024',
    { ...terrace, occupantLoad: 301 },
    'yes',
    { clause: 'b', on, basis: { ibc: 2024 } },
  ],
  [
    'terrace for 301, IBC 2018 is clause a',
    { ...terrace, occupantLoad: 301 },
    'no',
    { clause: 'b', on, basis: { ibc: 2018 } },
  ],
  [
    'corridor door for 301',
    { ...terrace, egressRole: 'exitAccess', occupantLoad: 301 },
    'no',
    { clause: 'b', on },
  ],
  [
    'balcony of one unit',
    { ...terrace, roomUse: 'unitBalcony', occupantLoad: 301 },
    'no',
    { clause: 'b', on },
  ],
  [
    'terrace of one office',
    { ...terrace, roomUse: 'officeTerrace', occupantLoad: 301 },
    'no',
    { clause: 'b', on },
  ],
  ['load not known', without(terrace, 'occupantLoad'), 'unknown', { clause: 'b', on }],
  ['a free lever', { ...terrace, occupantLoad: 301 }, 'no', { clause: 'b', on: free }],
  [
    'terrace',
    terrace,
    'yes',
    {
      clause: 'c',
      on,
      does: ['keyLockMainDoor', 'twoWayCommunication', 'glazedOpening', 'signOutdoor', 'postedLoad'],
    },
  ],
  ['terrace, IBC 2018', terrace, 'no', { clause: 'c', on, basis: { ibc: 2018 } }],
  ['terrace, NFPA 101 alone', terrace, 'no', { clause: 'c', on, basis: { ibc: null, nfpa101: 2021 } }],
  ['corridor door', { ...terrace, egressRole: 'exitAccess' }, 'no', { clause: 'c', on }],
  ['balcony of one unit', { ...terrace, roomUse: 'unitBalcony' }, 'no', { clause: 'c', on }],
  ['terrace of one office', { ...terrace, roomUse: 'officeTerrace' }, 'no', { clause: 'c', on }],
  ['role not known', without(terrace, 'egressRole'), 'unknown', { clause: 'c', on }],
  ['a free lever', terrace, 'no', { clause: 'c', on: free }],
  ...onEach([on, 'magnet/safe/sensor'], 'terrace', terrace, 'yes', { clause: 'd', does: 'signOff must' }),
  ['a free lever', terrace, 'no', { clause: 'd', on: free }],
  ['corridor door', { ...terrace, egressRole: 'exitAccess' }, 'no', { clause: 'd', on }],
  ['role not known', {}, 'unknown', { clause: 'd', on }],
  ['both books', terrace, 'yes', { clause: 'e', on, basis: { nfpa101: 2021 }, does: 'caution' }],
  ['IBC only', terrace, 'no', { clause: 'e', on }],
  [
    'corridor door',
    { ...terrace, egressRole: 'exitAccess' },
    'no',
    { clause: 'e', on, basis: { nfpa101: 2021 } },
  ],
  ['role not known', {}, 'unknown', { clause: 'e', on, basis: { nfpa101: 2021 } }],
  ['a free lever', terrace, 'no', { clause: 'e', on: free, basis: { nfpa101: 2021 } }],
);

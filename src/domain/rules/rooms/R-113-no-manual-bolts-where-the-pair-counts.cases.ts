import type { FactValues } from '../../model/fields.ts';
import { doing } from '../doing.ts';
import { type CaseRow, cases } from '../rule.ts';
import { without } from '../without.ts';

const pair = {
  egressRole: 'exitAccess',
  doorType: 'pair',
  roomUse: 'conference',
  occupancyGroup: 'A-3',
  inactiveBolts: 'manualFlush',
  inactiveNeededForCapacity: true,
} as const;

const spare = { ...pair, inactiveNeededForCapacity: false } as const;

const alone = { ibc: null, nfpa101: 2021 } as const;

function around(clause: string, facts: FactValues, basis = {}): readonly CaseRow[] {
  const at = { clause, basis };
  return [
    ['automatic bolts', { ...facts, inactiveBolts: 'automaticFlush' }, 'no', at],
    ['single leaf', { ...facts, doorType: 'single' }, 'no', at],
    ['storage room, R-111', { ...facts, roomUse: 'storage' }, 'no', at],
    ['equipment room, R-111', { ...facts, roomUse: 'equipment' }, 'no', at],
    ['cabinet', { ...facts, egressRole: 'noOccupiedSpace' }, 'no', at],
    ['group not known', without(facts, 'occupancyGroup'), 'unknown', at],
    ...(['B', 'F-1', 'F-2', 'S-1', 'S-2'] as const).map(
      (occupancyGroup): CaseRow => [
        `pair in ${occupancyGroup}, R-112`,
        { ...facts, occupancyGroup },
        'no',
        at,
      ],
    ),
  ];
}

export const R113Cases = cases(
  ...doing({ b: ['automaticFlushBolts'], c: 'signOff must' }, [
    ...[pair, spare].flatMap((facts): readonly CaseRow[] => [
      ...around('b', facts),
      ...(['A-3', 'E', 'H-3', 'I-2', 'M', 'R-1'] as const).flatMap((occupancyGroup) =>
        ([2018, 2021] as const).map(
          (ibc): CaseRow => [
            `pair in ${occupancyGroup}`,
            { ...facts, occupancyGroup },
            'yes',
            { clause: 'b', basis: { ibc } },
          ],
        ),
      ),
      ['assembly pair under IBC 2024', facts, 'yes', { clause: 'b', basis: { ibc: 2024 } }],
      ['shop, NFPA 101 alone', { ...facts, occupancyGroup: 'M' }, 'yes', { clause: 'b', basis: alone }],
      [
        'bedroom of a unit',
        { ...facts, occupancyGroup: 'R-2', roomUse: 'dwellingBedroom' },
        'no',
        { clause: 'b' },
      ],
      [
        'balcony of a unit',
        { ...facts, occupancyGroup: 'R-2', roomUse: 'unitBalcony' },
        'no',
        { clause: 'b' },
      ],
    ]),
    ['assembly pair, need not known', without(pair, 'inactiveNeededForCapacity'), 'yes', { clause: 'b' }],
    [
      'shop under IBC 2024, leaf needed',
      { ...pair, occupancyGroup: 'M' },
      'yes',
      { clause: 'b', basis: { ibc: 2024 } },
    ],
    [
      'shop under IBC 2024, leaf not needed',
      { ...spare, occupancyGroup: 'M' },
      'no',
      { clause: 'b', basis: { ibc: 2024 } },
    ],
    [
      'shop under IBC 2024, need not known',
      { ...without(pair, 'inactiveNeededForCapacity'), occupancyGroup: 'M' },
      'unknown',
      { clause: 'b', basis: { ibc: 2024 } },
    ],
    [
      'shop under IBC 2024, leaf not needed',
      { ...spare, occupancyGroup: 'M' },
      'yes',
      { clause: 'c', basis: { ibc: 2024 } },
    ],
    [
      'shop under IBC 2024, leaf needed',
      { ...pair, occupancyGroup: 'M' },
      'no',
      { clause: 'c', basis: { ibc: 2024 } },
    ],
    ['shop under IBC 2021', { ...spare, occupancyGroup: 'M' }, 'no', { clause: 'c' }],
    ['shop, NFPA 101 alone', { ...spare, occupancyGroup: 'M' }, 'no', { clause: 'c', basis: alone }],
    ['assembly pair under IBC 2024', spare, 'no', { clause: 'c', basis: { ibc: 2024 } }],
    [
      'balcony of a shop’s unit',
      { ...spare, occupancyGroup: 'M', roomUse: 'unitBalcony' },
      'no',
      { clause: 'c', basis: { ibc: 2024 } },
    ],
    [
      'bedroom of a shop’s unit',
      { ...spare, occupancyGroup: 'M', roomUse: 'dwellingBedroom' },
      'no',
      { clause: 'c', basis: { ibc: 2024 } },
    ],
    ...around('c', { ...spare, occupancyGroup: 'M' }, { ibc: 2024 }),
  ]),
);

import type { FactValues } from '../../model/fields.ts';
import { doing } from '../doing.ts';
import { cases, type CaseRow } from '../rule.ts';
import { without } from '../without.ts';

const revolving = { egressRole: 'exteriorExit', doorType: 'revolving' } as const;

const highTurnstile = { ...revolving, doorType: 'turnstileFull' } as const;

const turnstile = { ...revolving, doorType: 'turnstile' } as const;

const hinged = { ...revolving, doorType: 'single', barrierHeightIn: 40 } as const;

const plant = { occupancyGroup: 'H-3' } as const;

const onWing = 'magnet/safe/sensor';

/** Every part of `wings`, with the facts that the clause asks for beside it. */
const bothSides = (clause: string, name: string, also: FactValues = {}, on?: string): readonly CaseRow[] => {
  const asked = { clause, ...(on === undefined ? {} : { on }) };
  return [
    [`${name}, revolving door`, { ...revolving, ...also }, 'yes', asked],
    [`${name}, full-height turnstile`, { ...highTurnstile, ...also }, 'yes', asked],
    [`${name}, turnstile over 39 in high`, { ...turnstile, barrierHeightIn: 39.0625, ...also }, 'yes', asked],
    [`${name}, turnstile 39 in high`, { ...turnstile, barrierHeightIn: 39, ...also }, 'no', asked],
    [`${name}, sealed off`, { ...revolving, egressRole: 'sealedOff', ...also }, 'no', asked],
  ];
};

export const R138Cases = cases(
  ...doing(
    {
      a: 'prohibit',
      c: ['collapsingWings'],
      d: 'modify doorSupplier',
      e: 'caution',
      f: 'modify doorSupplier',
      g: 'signOff must',
    },
    [
      ...bothSides('a', 'high-hazard plant', plant),
      ['office', { ...revolving, occupancyGroup: 'B' }, 'no', { clause: 'a' }],
      ['hinged door of a plant', { ...without(hinged, 'barrierHeightIn'), ...plant }, 'no', { clause: 'a' }],
      [
        'tall counter beside a hinged door',
        { ...hinged, barrierHeightIn: 60, ...plant },
        'no',
        { clause: 'a' },
      ],
      ['group not known', revolving, 'unknown', { clause: 'a' }],
      ...bothSides('b', 'lock on a wing', {}, onWing),
      [
        'key lock on a wing',
        revolving,
        'yes',
        { clause: 'b', on: 'mechanicalLock/none/keyInside', does: 'prohibit' },
      ],
      ['free hardware', revolving, 'no', { clause: 'b', on: 'mechanicalLock/none/free' }],
      ['hinged door', hinged, 'no', { clause: 'b', on: onWing }],
      ['role not known', { doorType: 'revolving' }, 'unknown', { clause: 'b', on: onWing }],
      ...['c', 'g'].flatMap((clause): readonly CaseRow[] => [
        ...bothSides(clause, 'on a way out'),
        ['hinged door', hinged, 'no', { clause }],
        ['height of the turnstile not known', turnstile, 'unknown', { clause }],
      ]),
      ...bothSides('d', 'door 11 ft away', { swingDoorBesideFt: 11 }),
      ['door 10 ft away', { ...revolving, swingDoorBesideFt: 10 }, 'no', { clause: 'd' }],
      ['hinged door', { ...hinged, swingDoorBesideFt: 11 }, 'no', { clause: 'd' }],
      ['distance not known', revolving, 'unknown', { clause: 'd' }],
      ...bothSides('e', '51 people', { occupantLoad: 51 }),
      ['50 people', { ...revolving, occupantLoad: 50 }, 'no', { clause: 'e' }],
      ['hinged door', { ...hinged, occupantLoad: 51 }, 'no', { clause: 'e' }],
      ['load not known', revolving, 'unknown', { clause: 'e' }],
      ...bothSides('f', 'no ordinary doors beside', { barriersOverHalf: true }),
      ['doors beside', { ...revolving, barriersOverHalf: false }, 'no', { clause: 'f' }],
      ['hinged door', { ...hinged, barriersOverHalf: true }, 'no', { clause: 'f' }],
      ['not counted', revolving, 'unknown', { clause: 'f' }],
    ],
  ),
);

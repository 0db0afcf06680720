import { under } from '../../codes/sections.ts';
import { all, any, atMost, is, no, not, yes } from '../../logic/condition.ts';
import { cases, type CaseRow, defineRule } from '../rule.ts';

const grilleUse = is('occupancyGroup', 'B', 'F-1', 'F-2', 'M', 'S-1', 'S-2');
const smallUse = any(
  is('roomUse', 'office', 'storage'),
  is('occupancyGroup', 'F-1', 'F-2', 'S-1', 'S-2', 'U'),
);

const grille = { egressRole: 'exteriorExit', doorType: 'grille' } as const;
const coiling = { ...grille, doorType: 'overhead' } as const;
const mainGrille = { ...grille, mainDoor: true } as const;
const sideGrille = { ...grille, mainDoor: false } as const;
const office = { ...coiling, roomUse: 'office', occupancyGroup: 'B', occupantLoad: 10 } as const;
const shop = { ...office, roomUse: 'other', occupancyGroup: 'M' } as const;

export const R135 = defineRule({
  id: 'R-135',
  title: 'Security grilles and coiling doors in a means of egress',
  family: 'doors',
  book: 'ibc',
  cites: [under('securityGrilles'), under('doorSwing')],
  confidence: 'memory',
  note: 'The clause that a grille stays open while the public is in was read in a state text; the closed list of uses and the small-load case of coiling doors are from general knowledge. Refusing is the safe side.',
  why: 'A grille or coiling door does not swing open in front of a crowd, so it is allowed in a means of egress only in a few uses and never while it could trap someone.',
  clauses: [
    {
      key: 'a',
      effect: 'prohibit',
      when: all(yes('isEgress'), is('doorType', 'grille'), not(all(grilleUse, yes('mainDoor')))),
      says: 'A security grille may close the main exit of offices, factories, shops and storage only; nowhere else in a means of egress is it allowed, whatever locks it.',
    },
    {
      key: 'b',
      effect: 'modify',
      trade: 'doorSupplier',
      when: all(yes('isEgress'), is('doorType', 'grille'), yes('barriersOverHalf')),
      says: 'Grilles close more than half of the exits; at least half must be ordinary doors.',
    },
    {
      key: 'c',
      effect: 'require',
      when: all(yes('isEgress'), is('doorType', 'grille')),
      items: ['fullOpenMeans'],
      says: 'The grille stays fixed fully open while the public is in, and opens from inside without a key while anyone is there.',
    },
    {
      key: 'd',
      effect: 'prohibit',
      when: all(
        yes('isEgress'),
        is('doorType', 'overhead'),
        not(all(no('groupH'), smallUse, atMost('occupantLoad', 'otherDoorLoad'))),
      ),
      says: 'An overhead or coiling door is not a means of egress except from offices, garages, factory or storage space for ten people or fewer; provide a side-hinged door beside it.',
    },
    {
      key: 'e',
      effect: 'signOff',
      grade: 'must',
      when: all(yes('isEgress'), is('doorType', 'grille', 'overhead')),
      says: 'A reviewer confirms that this grille or coiling door may serve as egress.',
    },
  ],
  cases: cases(
    [
      'grille at the main exit of a hall',
      { ...mainGrille, occupancyGroup: 'A-3' },
      'yes',
      { clause: 'a', does: 'prohibit' },
    ],
    ['grille at a second exit of a shop', { ...sideGrille, occupancyGroup: 'M' }, 'yes', { clause: 'a' }],
    ...(['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'] as const).map(
      (occupancyGroup): CaseRow => [
        'grille at the main exit',
        { ...mainGrille, occupancyGroup },
        'no',
        { clause: 'a' },
      ],
    ),
    [
      'grille before a cabinet',
      { ...sideGrille, egressRole: 'noOccupiedSpace', occupancyGroup: 'A-3' },
      'no',
      { clause: 'a' },
    ],
    [
      'hinged door of a hall',
      { ...sideGrille, doorType: 'single', occupancyGroup: 'A-3' },
      'no',
      { clause: 'a' },
    ],
    ['grille, group not known', mainGrille, 'unknown', { clause: 'a' }],
    [
      'grilles in most exits',
      { ...grille, barriersOverHalf: true },
      'yes',
      { clause: 'b', does: 'modify doorSupplier' },
    ],
    ['other exits are doors', { ...grille, barriersOverHalf: false }, 'no', { clause: 'b' }],
    ['hinged door', { ...grille, doorType: 'pair', barriersOverHalf: true }, 'no', { clause: 'b' }],
    [
      'nothing to leave',
      { ...grille, egressRole: 'sealedOff', barriersOverHalf: true },
      'no',
      { clause: 'b' },
    ],
    ['other exits not counted', grille, 'unknown', { clause: 'b' }],
    ['grille on a way out', grille, 'yes', { clause: 'c', does: ['fullOpenMeans'] }],
    ['coiling door', coiling, 'no', { clause: 'c' }],
    ['grille before a cabinet', { ...grille, egressRole: 'noOccupiedSpace' }, 'no', { clause: 'c' }],
    ['door type not known', { egressRole: 'exteriorExit' }, 'unknown', { clause: 'c' }],
    [
      'coiling door of an office for 11',
      { ...office, occupantLoad: 11 },
      'yes',
      { clause: 'd', does: 'prohibit' },
    ],
    ['coiling door of an office for 10', office, 'no', { clause: 'd' }],
    ['coiling door of a store for 10', { ...office, roomUse: 'storage' }, 'no', { clause: 'd' }],
    ...(['F-1', 'F-2', 'S-1', 'S-2', 'U'] as const).map(
      (occupancyGroup): CaseRow => [
        'coiling door of a workshop or garage for 10',
        { ...shop, occupancyGroup },
        'no',
        { clause: 'd' },
      ],
    ),
    ['coiling door of a small shop', shop, 'yes', { clause: 'd' }],
    [
      'coiling door of a store of hazardous goods',
      { ...office, roomUse: 'storage', occupancyGroup: 'H-3', occupantLoad: 2 },
      'yes',
      { clause: 'd' },
    ],
    [
      'coiling door nobody needs to leave by',
      { ...shop, egressRole: 'sealedOff', occupantLoad: 90 },
      'no',
      { clause: 'd' },
    ],
    ['hinged door', { ...shop, doorType: 'single', occupantLoad: 90 }, 'no', { clause: 'd' }],
    ['load not known', { ...coiling, roomUse: 'storage', occupancyGroup: 'S-1' }, 'unknown', { clause: 'd' }],
    ['grille on a way out', grille, 'yes', { clause: 'e', does: 'signOff must' }],
    ['coiling door on a way out', coiling, 'yes', { clause: 'e' }],
    ['hinged door', { ...grille, doorType: 'single' }, 'no', { clause: 'e' }],
    ['coiling door nobody leaves by', { ...coiling, egressRole: 'sealedOff' }, 'no', { clause: 'e' }],
    ['role not known', { doorType: 'grille' }, 'unknown', { clause: 'e' }],
  ),
});

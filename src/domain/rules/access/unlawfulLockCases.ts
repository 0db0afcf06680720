import type { CodeBasis } from '../../codes/basis.ts';
import type { VerdictWord } from '../../logic/verdict.ts';
import type { FactValues } from '../../model/fields.ts';
import type { CaseRow } from '../rule.ts';
import { without } from '../without.ts';

/** `[what stands at the door, facts, is it unlawful, codes adopted]` */
type Row = readonly [string, FactValues, VerdictWord, Partial<CodeBasis>?];

/** What was found, asked of its own clause and of `l`, where a reviewer hears of all of them. */
function found(
  clause: string,
  existingArrangement: NonNullable<FactValues['existingArrangement']>,
  rows: readonly Row[],
): readonly CaseRow[] {
  return rows.flatMap(([name, facts, expect, basis]) =>
    [clause, 'l'].map(
      (asked): CaseRow => [
        name,
        { ...facts, existingArrangement },
        expect,
        { clause: asked, ...(basis === undefined ? {} : { basis }) },
      ],
    ),
  );
}

const nfpaAlone = { ibc: null, nfpa101: 2021 } as const;
const bothCodes = { nfpa101: 2021 } as const;
const neitherCode = { ibc: null } as const;

const office = { egressRole: 'exitAccess', occupancyGroup: 'B', roomUse: 'office' } as const;
const cabinet = { ...office, egressRole: 'noOccupiedSpace' } as const;
const jail = { ...office, occupancyGroup: 'I-3', roomUse: 'other' } as const;
const holdingRoom = { ...office, roomUse: 'detention' } as const;
const ward = { ...office, occupancyGroup: 'I-2', roomUse: 'patientUnit' } as const;
const elevatorLobby = { ...office, egressRole: 'elevatorLobby', roomUse: 'lobby' } as const;
const shopExit = { egressRole: 'exteriorExit', occupancyGroup: 'M', roomUse: 'other' } as const;

const sideDoor = { mainDoor: false } as const;
const meetingRoom = { ...office, roomUse: 'conference', ...sideDoor } as const;
const mainDoor = { ...office, egressRole: 'exteriorExit', roomUse: 'lobby', mainDoor: true } as const;
const hall = { ...mainDoor, occupancyGroup: 'A-3', roomUse: 'conference', placeOfWorship: false } as const;
const church = { ...hall, occupantLoad: 800, placeOfWorship: true } as const;
const terrace = { ...office, egressRole: 'exteriorSpace', roomUse: 'other', ...sideDoor } as const;
const roofTerrace = { ...terrace, egressRole: 'roofDoor', roofUse: 'occupied', occupantLoad: 20 } as const;
const balcony = { ...terrace, occupancyGroup: 'R-2', roomUse: 'unitBalcony' } as const;

const unit = { ...office, occupancyGroup: 'R-2', roomUse: 'dwellingEntrance' } as const;
const oneExit = { unitOccupantLoad: 11, unitSingleExit: true } as const;
const twoExits = { unitSingleExit: false } as const;
const smallUnit = { ...unit, unitOccupantLoad: 2 } as const;
const lever = { workStatus: 'existing', latch: 'bored', panicPresent: false } as const;
const classroom = { ...office, occupancyGroup: 'E', roomUse: 'classroom', ...lever } as const;
const stair = { egressRole: 'stairEntry', singleExitStair: false, stairStories: 3 } as const;
const onlyStair = { ...stair, singleExitStair: true } as const;

const factory = { egressRole: 'exitAccess', occupancyGroup: 'H-2', roomUse: 'other' } as const;
const crowd = {
  egressRole: 'exitAccess',
  doorType: 'single',
  occupancyGroup: 'A-3',
  occupantLoad: 200,
  roomUse: 'conference',
  latch: 'pushPull',
  panicPresent: false,
} as const;

const stadiumGate = {
  ...crowd,
  doorType: 'gateSwing',
  occupancyGroup: 'A-5',
  safeDispersalArea: true,
  gateSupervised: true,
} as const;
/** Doors whose space wants a push bar, and their neighbors that do not. */
const crowds: readonly Row[] = [
  ...(['A-1', 'A-2', 'A-3', 'A-4', 'A-5', 'E'] as const).flatMap((occupancyGroup): readonly Row[] => [
    ['crowd of 50', { ...crowd, occupancyGroup, occupantLoad: 50 }, 'yes'],
    [
      'crowd of 100, NFPA 101 alone',
      { ...crowd, occupancyGroup, occupantLoad: 100 },
      'yes',
      { ibc: null, nfpa101: 2021 },
    ],
  ]),
  ['hall for 49', { ...crowd, occupantLoad: 49 }, 'no'],
  ['hall for 99, NFPA 101 alone', { ...crowd, occupantLoad: 99 }, 'no', { ibc: null, nfpa101: 2021 }],
  [
    'day care in I-4, NFPA 101 alone',
    { ...crowd, occupancyGroup: 'I-4' },
    'yes',
    { ibc: null, nfpa101: 2021 },
  ],
  [
    'day care by use, NFPA 101 alone',
    { ...crowd, occupancyGroup: 'B', roomUse: 'dayCare' },
    'yes',
    { ibc: null, nfpa101: 2021 },
  ],
  ['office for 200', { ...crowd, occupancyGroup: 'B' }, 'no'],
  ['office for 200, NFPA 101 alone', { ...crowd, occupancyGroup: 'B' }, 'no', { ibc: null, nfpa101: 2021 }],
  ['hall for 200, neither code', crowd, 'no', { ibc: null }],
  ['sealed off', { ...crowd, egressRole: 'sealedOff' }, 'no'],
  ['sealed off, NFPA 101 alone', { ...crowd, egressRole: 'sealedOff' }, 'no', { ibc: null, nfpa101: 2021 }],
  ['sliding door', { ...crowd, doorType: 'slidingManual' }, 'no'],
  ['watched stadium gate with a dispersal area', stadiumGate, 'no'],
  ['watched gate of a theater yard', { ...stadiumGate, occupancyGroup: 'A-3' }, 'yes'],
  ['door of the stadium', { ...stadiumGate, doorType: 'single' }, 'yes'],
  ['gate of an arena', { ...stadiumGate, occupancyGroup: 'A-4' }, 'no'],
  ['gate without a dispersal area', { ...stadiumGate, safeDispersalArea: false }, 'yes'],
  ...(['H-1', 'H-2', 'H-3', 'H-4', 'H-5'] as const).map(
    (occupancyGroup): Row => [
      'high hazard for 6, NFPA 101 alone',
      { ...crowd, occupancyGroup, occupantLoad: 6 },
      'yes',
      { ibc: null, nfpa101: 2021 },
    ],
  ),
  ['gate nobody watches', { ...stadiumGate, gateSupervised: false }, 'yes'],
];

const careGroups = ['I-1.1', 'I-1.2', 'I-2'] as const;

const detained: readonly Row[] = [
  ['jail', jail, 'no'],
  ['holding room', holdingRoom, 'no'],
];
/** People kept in: by the law, or for their care. */
const keptIn: readonly Row[] = [
  ...detained,
  ...careGroups.flatMap((occupancyGroup) =>
    (['containment', 'securityThreat'] as const).map(
      (clinicalNeed): Row => [
        'patients kept in for care',
        { ...office, occupancyGroup, roomUse: 'memoryCare', clinicalNeed },
        'no',
      ],
    ),
  ),
  ['hospital without clinical need', { ...ward, clinicalNeed: 'none' }, 'yes'],
  ['clinical need claimed in an office', { ...office, clinicalNeed: 'containment' }, 'yes'],
  ['cabinet', cabinet, 'no'],
];
const roleNotKnown: Row = ['role not known', without(office, 'egressRole'), 'unknown'];
const keptInOrLobby: readonly Row[] = [
  ...keptIn,
  ['elevator lobby under IBC 2021', elevatorLobby, 'yes'],
  ['elevator lobby under IBC 2024', elevatorLobby, 'no', { ibc: 2024 }],
  ['elevator lobby under NFPA 101 alone', elevatorLobby, 'no', nfpaAlone],
  ['elevator lobby under both codes', elevatorLobby, 'yes', bothCodes],
  ['elevator lobby under neither code', elevatorLobby, 'yes', neitherCode],
  ['office door under IBC 2024', office, 'yes', { ibc: 2024 }],
  roleNotKnown,
];
const units: readonly Row[] = [
  ...(['R-1', 'R-2', 'R-3'] as const).flatMap((occupancyGroup) =>
    ([2018, 2021] as const).map(
      (ibc): Row => [
        'unit for 10',
        { ...unit, ...twoExits, occupancyGroup, unitOccupantLoad: 10 },
        'no',
        { ibc },
      ],
    ),
  ),
  ['unit for 11', { ...unit, ...oneExit }, 'yes'],
  ['unit with one exit under IBC 2024', { ...unit, ...oneExit }, 'no', { ibc: 2024 }],
  ['unit with two exits under IBC 2024', { ...unit, ...twoExits, unitOccupantLoad: 8 }, 'yes', { ibc: 2024 }],
  ['unit under NFPA 101 alone', { ...unit, ...twoExits, unitOccupantLoad: 11 }, 'no', nfpaAlone],
  ['unit for 11 under both codes', { ...unit, ...oneExit }, 'yes', bothCodes],
  ['unit, neither code', { ...unit, unitOccupantLoad: 8, unitSingleExit: true }, 'yes', neitherCode],
  ['board and care', { ...smallUnit, occupancyGroup: 'R-4' }, 'yes'],
  ['bedroom in a unit', { ...smallUnit, roomUse: 'dwellingBedroom' }, 'no'],
  ['store of a block of flats', { ...smallUnit, roomUse: 'storage' }, 'yes'],
  ['room not known', { ...without(unit, 'roomUse'), unitOccupantLoad: 8 }, 'unknown'],
  ...detained,
];

const doubleCylinders: readonly Row[] = [
  ['keyed inside, meeting room', meetingRoom, 'yes'],
  ...(['B', 'F-1', 'F-2', 'M', 'S-1', 'S-2'] as const).map(
    (occupancyGroup): Row => ['main door', { ...mainDoor, occupancyGroup }, 'no'],
  ),
  ['main door of a school', { ...mainDoor, occupancyGroup: 'E', occupantLoad: 40 }, 'yes'],
  ['main door of a hall for 300', { ...hall, occupantLoad: 300 }, 'no'],
  ['main door of a hall for 301', { ...hall, occupantLoad: 301 }, 'yes'],
  ['main door of a church for 800', church, 'no'],
  ['church for 800, both codes', church, 'no', bothCodes],
  ['church for 800, neither code', church, 'no', neitherCode],
  ['side door of a church', { ...church, ...sideDoor }, 'yes'],
  ['church for 800, NFPA 101 alone', church, 'yes', nfpaAlone],
  ['hall for 500, NFPA 101 alone', { ...hall, occupantLoad: 500 }, 'no', nfpaAlone],
  ['hall for 501, NFPA 101 alone', { ...hall, occupantLoad: 501 }, 'yes', nfpaAlone],
  ['hall for 500, both codes', { ...hall, occupantLoad: 500 }, 'yes', bothCodes],
  ['hall for 500, neither code', { ...hall, occupantLoad: 500 }, 'yes', neitherCode],
  ['jail', { ...jail, ...sideDoor }, 'no'],
  ['holding room', { ...holdingRoom, ...sideDoor }, 'no'],
  ...careGroups.map(
    (occupancyGroup): Row => [
      'patients kept in for care',
      { ...ward, ...sideDoor, occupancyGroup, clinicalNeed: 'containment' },
      'no',
    ],
  ),
  ['patients are a threat', { ...ward, ...sideDoor, clinicalNeed: 'securityThreat' }, 'no'],
  ['hospital without clinical need', { ...ward, ...sideDoor, clinicalNeed: 'none' }, 'yes'],
  ['clinical need claimed in an office', { ...office, ...sideDoor, clinicalNeed: 'containment' }, 'yes'],
  ...([2021, 2024] as const).flatMap((ibc): readonly Row[] => [
    ['terrace door for 300 under IBC 2021 or 2024', { ...terrace, occupantLoad: 300 }, 'no', { ibc }],
    ['roof terrace for 300 under IBC 2021 or 2024', { ...roofTerrace, occupantLoad: 300 }, 'no', { ibc }],
    ...(['unitBalcony', 'officeTerrace'] as const).map(
      (roomUse): Row => [
        'private balcony or terrace under IBC 2021 or 2024',
        { ...balcony, roomUse, occupantLoad: 301 },
        'no',
        { ibc },
      ],
    ),
  ]),
  ['terrace door for 301', { ...terrace, occupantLoad: 301 }, 'yes'],
  ['roof terrace for 301', { ...roofTerrace, occupantLoad: 301 }, 'yes'],
  ['roof nobody uses', { ...roofTerrace, roofUse: 'unoccupied' }, 'yes'],
  ['door of an office, roof used', { ...roofTerrace, egressRole: 'exitAccess' }, 'yes'],
  ['private balcony under IBC 2018', { ...balcony, occupantLoad: 4 }, 'yes', { ibc: 2018 }],
  ['private balcony, IBC not adopted', { ...balcony, occupantLoad: 4 }, 'yes', nfpaAlone],
  ['terrace door under IBC 2018', { ...terrace, occupantLoad: 20 }, 'yes', { ibc: 2018 }],
  ['terrace door, IBC not adopted', { ...terrace, occupantLoad: 20 }, 'yes', nfpaAlone],
  ['sealed off', { ...meetingRoom, egressRole: 'sealedOff' }, 'no'],
  ['main door not known', without(mainDoor, 'mainDoor'), 'unknown'],
];
const latchesAndBolts: readonly Row[] = [
  ['latch and bolt on an office', office, 'yes'],
  ...units,
  ...([2021, 2024] as const).map(
    (nfpa101): Row => [
      'existing classroom, NFPA 101 of 2021 or 2024 alone',
      classroom,
      'no',
      { ibc: null, nfpa101 },
    ],
  ),
  ['existing classroom, NFPA 101 of 2018', classroom, 'yes', { ibc: null, nfpa101: 2018 }],
  ['existing classroom, both codes', classroom, 'yes', bothCodes],
  ['existing classroom, neither code', classroom, 'yes', neitherCode],
  ['new classroom', { ...classroom, workStatus: 'new' }, 'yes', nfpaAlone],
  ['classroom with a push bar', { ...classroom, latch: 'rimExit', panicPresent: true }, 'yes', nfpaAlone],
  ['old office', { ...office, ...lever }, 'yes', nfpaAlone],
  ['cabinet', cabinet, 'no'],
];
const stairSides: readonly Row[] = [
  ['stair side locked', stair, 'yes'],
  ['single exit stair', onlyStair, 'no'],
  ['way out of the stair locked', { ...onlyStair, egressRole: 'stairDischarge' }, 'yes'],
  ['four stories, NFPA 101 alone', { ...stair, stairStories: 4 }, 'no', nfpaAlone],
  ['five stories, NFPA 101 alone', { ...stair, stairStories: 5 }, 'yes', nfpaAlone],
  ['single exit stair of five stories under IBC', { ...onlyStair, stairStories: 5 }, 'no'],
  ['room door', { ...stair, egressRole: 'exitAccess', stairStories: 5 }, 'no', bothCodes],
  ['single exit not known', without(stair, 'singleExitStair'), 'unknown'],
];

const wayOut = { egressRole: 'exitAccess' } as const;
const exit = { egressRole: 'exteriorExit' } as const;
const freeLever = { existingArrangement: 'freeLever' } as const;
const openStair = { ...stair, ...freeLever, stairStories: 5 } as const;
const openDischarge = { ...office, ...freeLever, egressRole: 'stairDischarge', fireRatingMin: 60 } as const;
const fullSet = { ...office, existingArrangement: 'magnetFullSet' } as const;

export const unlawfulLockCases: readonly CaseRow[] = [
  ...found('a', 'doubleCylinder', doubleCylinders),
  ...found('b', 'deadboltPlusLatch', latchesAndBolts),
  ...found('c', 'padlock', [
    ['chain on a shop exit', shopExit, 'yes'],
    ['entrance of a unit for two', smallUnit, 'yes'],
    ['bedroom in a unit', { ...smallUnit, roomUse: 'dwellingBedroom' }, 'yes'],
    ...detained,
    ['gate nobody leaves by', { ...shopExit, egressRole: 'sealedOff', roomUse: 'site' }, 'no'],
    ['role not known', without(shopExit, 'egressRole'), 'unknown'],
  ]),
  ...found('p', 'slideBolt', [
    ['slide bolt on a shop exit', shopExit, 'yes'],
    ...units,
    ['gate nobody leaves by', { ...shopExit, egressRole: 'sealedOff', roomUse: 'site' }, 'no'],
  ]),
  ['a padlock is clause c', { ...shopExit, existingArrangement: 'padlock' }, 'no', { clause: 'p' }],
  ['a slide bolt is clause p', { ...shopExit, existingArrangement: 'slideBolt' }, 'no', { clause: 'c' }],
  ...found('d', 'barricade', [
    ['barricade in a school', wayOut, 'yes'],
    ['barricade on a cabinet', { egressRole: 'noOccupiedSpace' }, 'no'],
    ['role not known', {}, 'unknown'],
  ]),
  ...found('e', 'magnetNoSensor', [
    ['magnet with a button', office, 'yes'],
    ...keptIn,
    ['clinical need not known', ward, 'unknown'],
  ]),
  ...found('f', 'magnetAlarmOnly', [['magnet on alarm only', office, 'yes'], ...keptInOrLobby]),
  ...found('g', 'failSafeStrike', [
    ['fail-safe strike on a fire door', { ...wayOut, fireRatingMin: 60 }, 'yes'],
    ['fail-safe strike on a plain door', { ...wayOut, fireRatingMin: 0, wallRatingMin: 0 }, 'no'],
    ['rating not known', wayOut, 'unknown'],
  ]),
  ...found('h', 'cardToExit', [
    ['card to leave', { ...office, roomUse: 'serverRoom' }, 'yes'],
    ...keptInOrLobby,
  ]),
  ...found('i', 'buttonBeforeBar', [
    ['button before the bar', exit, 'yes'],
    ['sealed off', { egressRole: 'sealedOff' }, 'no'],
    ['role not known', {}, 'unknown'],
  ]),
  ...found('j', 'electricBolt', [['electric bolt on an office', office, 'yes'], ...keptIn, roleNotKnown]),
  ...found('k', 'stairSideLocked', stairSides),
  ...(['magnetNoSensor', 'magnetAlarmOnly', 'magnetFullSet', 'electricBolt'] as const).flatMap((lock) =>
    found('m', lock, [
      ['held lock in high hazard', factory, 'yes'],
      ['cabinet', { ...factory, egressRole: 'noOccupiedSpace' }, 'no'],
    ]),
  ),
  ...(['magnetFullSet'] as const).flatMap((lock) =>
    found('m', lock, [
      ['factory that is not hazardous', { ...factory, occupancyGroup: 'F-1' }, 'no'],
      ['group not known', without(factory, 'occupancyGroup'), 'unknown'],
    ]),
  ),
  ['free lever in high hazard', { ...factory, existingArrangement: 'freeLever' }, 'no', { clause: 'm' }],
  ...(['magnetNoSensor', 'magnetAlarmOnly', 'magnetFullSet'] as const).flatMap((lock) =>
    found('n', lock, [
      ['hall for 200, push and pull', crowd, 'yes'],
      ['hall for 200, NFPA 101 alone', crowd, 'yes', nfpaAlone],
    ]),
  ),
  ...found('n', 'magnetFullSet', [
    ...crowds,
    ['bar on the leaf', { ...crowd, panicPresent: true }, 'no'],
    ['bar or not: not known', without(crowd, 'panicPresent'), 'unknown'],
  ]),
  ...(['n', 'o'] as const).map(
    (clause): CaseRow => [
      'high hazard for 5, NFPA 101 alone',
      {
        ...crowd,
        occupancyGroup: 'H-2',
        occupantLoad: 5,
        panicPresent: clause === 'o',
        existingArrangement: 'magnetFullSet',
      },
      'no',
      { clause, basis: nfpaAlone },
    ],
  ),
  ['free lever in a hall', { ...crowd, existingArrangement: 'freeLever' }, 'no', { clause: 'n' }],
  ...crowds.map(
    ([name, facts, expect, basis]): CaseRow => [
      name,
      { ...facts, panicPresent: true, existingArrangement: 'magnetFullSet' },
      expect,
      { clause: 'o', ...(basis && { basis }) },
    ],
  ),
  ['no bar is clause n', { ...crowd, existingArrangement: 'magnetFullSet' }, 'no', { clause: 'o' }],
  [
    'button only is clause e',
    { ...crowd, panicPresent: true, existingArrangement: 'magnetNoSensor' },
    'no',
    { clause: 'o' },
  ],
  [
    'load not known',
    { ...without(crowd, 'occupantLoad'), panicPresent: true, existingArrangement: 'magnetFullSet' },
    'unknown',
    { clause: 'o' },
  ],
  // Nothing unlawful found.
  ['free lever found', { ...meetingRoom, ...freeLever }, 'no', { clause: 'a' }],
  ['free lever found', { ...office, ...freeLever }, 'no', { clause: 'b' }],
  ['free lever found', { ...shopExit, ...freeLever }, 'no', { clause: 'c' }],
  ['free lever found', { ...wayOut, ...freeLever }, 'no', { clause: 'd' }],
  ['full set found', fullSet, 'no', { clause: 'e' }],
  ['full set found', fullSet, 'no', { clause: 'f' }],
  ['free lever on a fire door', { ...wayOut, ...freeLever, fireRatingMin: 60 }, 'no', { clause: 'g' }],
  ['free lever found', { ...office, ...freeLever }, 'no', { clause: 'h' }],
  ['free bar found', { ...exit, existingArrangement: 'freeBar' }, 'no', { clause: 'i' }],
  ['free lever found', { ...office, ...freeLever }, 'no', { clause: 'j' }],
  ['free lever on a stair', openStair, 'no', { clause: 'k', basis: bothCodes }],
  ['free lever on the way out of the stair', openDischarge, 'no', { clause: 'l' }],
  ['nothing unlawful found', { ...office, ...freeLever, fireRatingMin: 60 }, 'no', { clause: 'l' }],
];

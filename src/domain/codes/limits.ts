import { books, type CodeBasis, type IbcEdition, type NecEdition, type Nfpa101Edition } from './basis.ts';

export interface LimitEntry {
  readonly value: number;
  /** Section in that edition; our own paraphrase lives in the rule. */
  readonly section: string;
  /** The day a person last held this value against its source. */
  readonly checkedOn: string;
  readonly confidence: 'read' | 'secondary' | 'memory';
}

interface Said {
  readonly unit: string;
  readonly what: string;
}
/** Every edition of its book has an entry: an edition that is added fails to compile until each value is looked up. */
type OfBook<Book, Edition extends number | 'any'> = Said & {
  readonly book: Book;
  readonly editions: Readonly<Record<Edition, LimitEntry>>;
};
export type Limit =
  | OfBook<'ibc', IbcEdition>
  | OfBook<'nfpa101', Nfpa101Edition>
  | OfBook<'nec', NecEdition>
  | OfBook<'ada' | 'practice' | 'project', 'any'>;

/** One value in every edition, under the section that says so in each. */
function same<Edition extends number>(
  value: number,
  sections: Readonly<Record<Edition, string>>,
  confidence: LimitEntry['confidence'],
  checkedOn: string,
): Readonly<Record<Edition, LimitEntry>> {
  return Object.fromEntries(
    Object.entries<string>(sections).map(([edition, section]) => [
      edition,
      { value, section, checkedOn, confidence },
    ]),
  ) as Record<Edition, LimitEntry>;
}

/** Numbers that codes set, filed by edition. Logic names a limit; it never carries the number. */
export const limits = {
  panicLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'occupant load of Group A or E space from which latching doors need panic hardware',
    editions: same(50, { 2018: '1010.1.10', 2021: '1010.2.9', 2024: '1010.2.8' }, 'read', '2026-11-25'),
  },
  panicLoadNfpa: {
    book: 'nfpa101',
    unit: 'people',
    what: 'occupant load of assembly, educational and day-care use from which panic hardware is needed',
    editions: same(100, { 2018: '7.2.1.7', 2021: '7.2.1.7', 2024: '7.2.1.7' }, 'secondary', '2026-11-25'),
  },
  panicLoadHighHazardNfpa: {
    book: 'nfpa101',
    unit: 'people',
    what: 'occupant load of high hazard above which panic hardware is needed',
    editions: same(5, { 2018: '7.11', 2021: '7.11', 2024: '7.11' }, 'secondary', '2026-11-25'),
  },
  panicAmpsIbc: {
    book: 'ibc',
    unit: 'A',
    what: 'equipment rating from which an electrical room needs panic hardware',
    editions: {
      2018: { value: 1200, section: '1010.1.10', checkedOn: '2026-11-25', confidence: 'read' },
      2021: { value: 800, section: '1010.2.9.2', checkedOn: '2026-11-25', confidence: 'memory' },
      2024: { value: 800, section: '1010.2.8.2', checkedOn: '2026-11-25', confidence: 'read' },
    },
  },
  panicAmpsNec: {
    book: 'nec',
    unit: 'A',
    what: 'equipment rating from which doors near the working space need listed panic hardware',
    editions: same(
      800,
      { 2017: '110.26(C)(3)', 2020: '110.26(C)(3)', 2023: '110.26(C)(3)' },
      'secondary',
      '2026-11-25',
    ),
  },
  panicVoltsNec: {
    book: 'nec',
    unit: 'V',
    what: 'voltage above which doors near the working space need listed panic hardware',
    editions: same(
      1000,
      { 2017: '110.33(A)(3)', 2020: '110.33(A)(3)', 2023: '110.33(A)(3)' },
      'secondary',
      '2026-11-25',
    ),
  },
  panicWorkingSpaceFt: {
    book: 'nec',
    unit: 'ft',
    what: 'distance from working space to door below which the electrical-room panic rule applies (IBC 2021 on: the same)',
    editions: same(
      25,
      { 2017: '110.26(C)(3)', 2020: '110.26(C)(3)', 2023: '110.26(C)(3)' },
      'read',
      '2026-11-25',
    ),
  },
  keyLockAssemblyLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'largest assembly load whose main door may have a key-operated lock',
    editions: same(300, { 2018: '1010.1.9.4', 2021: '1010.2.4', 2024: '1010.2.4' }, 'read', '2026-11-25'),
  },
  keyLockAssemblyLoadNfpa: {
    book: 'nfpa101',
    unit: 'people',
    what: 'largest assembly load whose main entrance may have a key-operated lock',
    editions: same(500, { 2018: '12.2.2.2', 2021: '12.2.2.2', 2024: '12.2.2.2' }, 'memory', '2026-11-25'),
  },
  delayedClassroomLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'occupant load under which a Group E classroom may have delayed egress',
    editions: same(
      50,
      { 2018: '1010.1.9.8', 2021: '1010.2.13', 2024: '1010.2.12' },
      'secondary',
      '2026-11-25',
    ),
  },
  delayedDoorsPerPathIbc: {
    book: 'ibc',
    unit: 'doors',
    what: 'delayed-egress doors allowed in one egress path',
    editions: same(
      1,
      { 2018: '1010.1.9.8.1', 2021: '1010.2.13.1', 2024: '1010.2.12.1' },
      'read',
      '2026-11-25',
    ),
  },
  delayedDoorsPerPathGroupIIbc: {
    book: 'ibc',
    unit: 'doors',
    what: 'delayed-egress doors allowed in one egress path in institutional groups',
    editions: same(
      2,
      { 2018: '1010.1.9.8.1', 2021: '1010.2.13.1', 2024: '1010.2.12.1' },
      'read',
      '2026-11-25',
    ),
  },
  controlledDoorsPerPathIbc: {
    book: 'ibc',
    unit: 'doors',
    what: 'controlled-egress doors allowed before an exit',
    editions: same(
      1,
      { 2018: '1010.1.9.7', 2021: '1010.2.14', 2024: '1010.2.13' },
      'secondary',
      '2026-11-25',
    ),
  },
  delayStartIbc: {
    book: 'ibc',
    unit: 's',
    what: 'longest effort to leave that starts the delay of a delayed-egress door; some adopted texts name 1 s',
    editions: same(3, { 2018: '1010.1.9.8', 2021: '1010.2.13', 2024: '1010.2.12' }, 'memory', '2026-11-30'),
  },
  delayStartNfpa: {
    book: 'nfpa101',
    unit: 's',
    what: 'longest effort to leave that starts the delay of a delayed-egress door',
    editions: same(3, { 2018: '7.2.1.6.1', 2021: '7.2.1.6.1', 2024: '7.2.1.6.1' }, 'memory', '2026-11-30'),
  },
  unitBoltLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'largest load of a dwelling or sleeping unit whose entrance may have a second bolt; 2024 asks for a single-exit unit instead',
    editions: same(
      10,
      { 2018: '1010.1.9.4', 2021: '1010.2.4', 2024: 'no load named' },
      'memory',
      '2026-11-25',
    ),
  },
  exteriorSpaceLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'largest load of a court, terrace or balcony whose doors back inside may be key-locked; 2018 has no such case',
    editions: same(
      300,
      { 2018: 'no such case', 2021: '1010.2.4', 2024: '1010.2.4' },
      'secondary',
      '2026-11-25',
    ),
  },
  manualBoltLoadIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'occupant load under which a B, F or S pair may have manual bolts on its inactive leaf',
    editions: same(
      50,
      { 2018: '1010.1.9.5', 2021: '1010.2.5', 2024: 'Table 1010.2.4' },
      'secondary',
      '2026-11-25',
    ),
  },
  refrigerationRoomAreaIbc: {
    book: 'ibc',
    unit: 'ft²',
    what: 'area above which a refrigeration machinery room needs two exits and panic hardware',
    editions: same(
      1000,
      { 2018: '1006.2.2.2', 2021: '1006.2.2.2', 2024: '1006.2.2.2' },
      'secondary',
      '2026-11-25',
    ),
  },
  dayCareSecondExitIbc: {
    book: 'ibc',
    unit: 'people',
    what: 'number of very young children above which a day-care room needs a second exit',
    editions: same(10, { 2018: '1006.2.2', 2021: '1006.2.2', 2024: '1006.2.2' }, 'memory', '2026-11-25'),
  },
  dispersalFt2PerPersonIbc: {
    book: 'ibc',
    unit: 'ft² a person',
    what: 'room of a safe dispersal area where the way does not reach a public way',
    editions: same(5, { 2018: '1028.5', 2021: '1028.5', 2024: '1028.5' }, 'secondary', '2026-11-30'),
  },
  hardwareLowIn: {
    book: 'ada',
    unit: 'in',
    what: 'lowest height of hardware that must be worked to leave',
    editions: { any: { value: 34, section: '404.2.7', checkedOn: '2026-11-25', confidence: 'read' } },
  },
  poolLatchHighIn: {
    book: 'ada',
    unit: 'in',
    what: 'greatest height of the latch release of a gate in a pool barrier',
    editions: { any: { value: 54, section: '404.2.7', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  hardwareHighIn: {
    book: 'ada',
    unit: 'in',
    what: 'greatest height of hardware that must be worked to leave',
    editions: { any: { value: 48, section: '404.2.7', checkedOn: '2026-11-25', confidence: 'read' } },
  },
  clearWidthMinIn: {
    book: 'ada',
    unit: 'in',
    what: 'least clear width of one leaf open 90 degrees',
    editions: { any: { value: 32, section: '404.2.3', checkedOn: '2026-11-25', confidence: 'read' } },
  },
  magnetThinLeafHeightIn: {
    book: 'practice',
    unit: 'in',
    what: 'opening height below which even a magnet 2 in deep leaves less than 80 in clear',
    editions: { any: { value: 82, section: '', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  magnetDeepLeafHeightIn: {
    book: 'practice',
    unit: 'in',
    what: 'opening height from which a magnet 3 in deep still leaves 80 in clear',
    editions: { any: { value: 83, section: '', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  buttHingeLeafWidthIn: {
    book: 'practice',
    unit: 'in',
    what: 'single leaf on butt hinges, 1-3/4 in thick, that leaves 32 in clear',
    editions: { any: { value: 34.75, section: '', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  leastEngagementIn: {
    book: 'practice',
    unit: 'in',
    what: 'least engagement of a latch in its keeper that is counted as holding',
    editions: { any: { value: 0.25, section: '', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  commercialLeafThicknessIn: {
    book: 'practice',
    unit: 'in',
    what: 'leaf thickness that commercial locks are made for',
    editions: { any: { value: 1.75, section: '', checkedOn: '2026-11-25', confidence: 'memory' } },
  },
  thinnestLockLeafIn: {
    book: 'practice',
    unit: 'in',
    what: 'thinnest leaf that a bored lock is made for',
    editions: { any: { value: 1.375, section: '', checkedOn: '2026-11-25', confidence: 'secondary' } },
  },
  thickestLockLeafIn: {
    book: 'practice',
    unit: 'in',
    what: 'thickest leaf that a thick-door kit reaches',
    editions: { any: { value: 2.25, section: '', checkedOn: '2026-11-25', confidence: 'secondary' } },
  },
  stairLockStoriesNfpa: {
    book: 'nfpa101',
    unit: 'stories',
    what: 'stories served by a stair above which its locked doors need a way back in',
    editions: same(4, { 2018: '7.2.1.5.8', 2021: '7.2.1.5.8', 2024: '7.2.1.5.8' }, 'secondary', '2026-11-25'),
  },
  stairLockStoriesLocal: {
    book: 'project',
    unit: 'stories',
    what: 'stories served by a stair above which older and some local texts allow no locked stair side outside high-rises',
    editions: {
      any: {
        value: 4,
        section: 'IBC 2015 1010.1.9.11, where local text keeps it',
        checkedOn: '2026-11-25',
        confidence: 'read',
      },
    },
  },
  horizontalExitDoorMin: {
    book: 'ibc',
    unit: 'min',
    what: 'least fire rating of a door in a horizontal exit',
    editions: same(
      90,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'memory',
      '2026-11-25',
    ),
  },
  swingWithEgressLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'occupant load from which a door swings with egress',
    editions: same(
      50,
      { 2018: '1010.1.2.1', 2021: '1010.1.2.1', 2024: '1010.1.2.1' },
      'secondary',
      '2026-11-25',
    ),
  },
  turnstileLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'most people one turnstile or narrow lane is counted for',
    editions: same(50, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'read', '2026-11-25'),
  },
  turnstileHighIn: {
    book: 'ibc',
    unit: 'in',
    what: 'height above which a turnstile counts as a high one',
    editions: same(39, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'read', '2026-11-25'),
  },
  turnstileClearIn: {
    book: 'ibc',
    unit: 'in',
    what: 'least free width of a waist-high turnstile up to its top',
    editions: same(16.5, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'read', '2026-11-25'),
  },
  turnstileSideDoorLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'load served above which turnstiles need a side-hinged door close by',
    editions: same(300, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'read', '2026-11-25'),
  },
  turnstileSideDoorFt: {
    book: 'ibc',
    unit: 'ft',
    what: 'greatest distance from the turnstile to that side-hinged door',
    editions: same(50, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'read', '2026-11-25'),
  },
  securityLaneIn: {
    book: 'ibc',
    unit: 'in',
    what: 'least free width of a security turnstile lane',
    editions: same(22, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'memory', '2026-11-25'),
  },
  securityLaneByWidthIn: {
    book: 'ibc',
    unit: 'in',
    what: 'lane width from which the lane is counted by its width',
    editions: same(32, { 2018: '1010.3', 2021: '1010.5', 2024: '1010.5' }, 'memory', '2026-11-25'),
  },
  revolvingLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'most people one revolving door is counted for',
    editions: same(50, { 2018: '1010.1.4.1', 2021: '1010.3.1', 2024: '1010.3.1' }, 'memory', '2026-11-25'),
  },
  revolvingSideDoorFt: {
    book: 'ibc',
    unit: 'ft',
    what: 'greatest distance from a revolving door to a swinging door in the same wall',
    editions: same(10, { 2018: '1010.1.4.1', 2021: '1010.3.1', 2024: '1010.3.1' }, 'memory', '2026-11-25'),
  },
  otherDoorLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'load up to which a door other than side-hinged may serve egress',
    editions: same(10, { 2018: '1010.1.2', 2021: '1010.1.2', 2024: '1010.1.2' }, 'secondary', '2026-11-25'),
  },
  seriesFreeLengthIn: {
    book: 'ibc',
    unit: 'in',
    what: 'free length between two doors in series, the leaf that swings in not counted',
    editions: same(48, { 2018: '1010.1.8', 2021: '1010.1.7', 2024: '1010.1.7' }, 'memory', '2026-11-25'),
  },
  bedDoorWidthIn: {
    book: 'ibc',
    unit: 'in',
    what: 'clear width of egress doors of Group I-2 through which beds are moved',
    editions: {
      2018: { value: 41.5, section: '1010.1.1', checkedOn: '2026-11-30', confidence: 'read' },
      2021: { value: 41.5, section: '1010.1.1', checkedOn: '2026-11-30', confidence: 'memory' },
      2024: { value: 41.5, section: '1010.1.1', checkedOn: '2026-11-30', confidence: 'memory' },
    },
  },
  autoDoorAssemblyLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'load above which a public assembly entrance needs an automatic door',
    editions: same(
      300,
      { 2018: 'none in this edition', 2021: '1105.1.1', 2024: '1105.1.1' },
      'secondary',
      '2026-11-25',
    ),
  },
  autoDoorOtherLoad: {
    book: 'ibc',
    unit: 'people',
    what: 'load above which a public entrance of a shop, office or hotel needs an automatic door',
    editions: same(
      500,
      { 2018: 'none in this edition', 2021: '1105.1.1', 2024: '1105.1.1' },
      'secondary',
      '2026-11-25',
    ),
  },
  unlatchingForceLbf: {
    book: 'ibc',
    unit: 'lbf',
    what: 'greatest push or pull that unlatches',
    editions: same(15, { 2018: '1010.1.3', 2021: '1010.1.3', 2024: '1010.1.3' }, 'secondary', '2026-11-25'),
  },
  operableForceLbf: {
    book: 'ada',
    unit: 'lbf',
    what: 'greatest force to work a part of an accessible door',
    editions: { any: { value: 5, section: '309.4', checkedOn: '2026-11-25', confidence: 'read' } },
  },
  officeTerraceFt2: {
    book: 'ibc',
    unit: 'ft²',
    what: 'largest private office terrace whose door may be locked',
    editions: same(
      250,
      { 2018: 'none in this edition', 2021: '1010.2.4 item 10', 2024: '1010.2.4' },
      'memory',
      '2026-11-25',
    ),
  },
  doorMinInBarrier1h: {
    book: 'ibc',
    unit: 'min',
    what: 'door in a fire barrier of 1 h',
    editions: same(
      45,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'secondary',
      '2026-11-25',
    ),
  },
  doorMinInWall2h: {
    book: 'ibc',
    unit: 'min',
    what: 'door in a wall of more than 1 h, up to 2 h',
    editions: same(
      90,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'read',
      '2026-11-25',
    ),
  },
  doorMinInWall4h: {
    book: 'ibc',
    unit: 'min',
    what: 'door in a wall of more than 2 h',
    editions: same(
      180,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'read',
      '2026-11-25',
    ),
  },
  doorMinInEnclosure1h: {
    book: 'ibc',
    unit: 'min',
    what: 'door in an exit stair, shaft or passageway of 1 h',
    editions: same(
      60,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'memory',
      '2026-11-25',
    ),
  },
  doorMinInCorridor: {
    book: 'ibc',
    unit: 'min',
    what: 'door in a corridor, half-hour partition or smoke barrier',
    editions: same(
      20,
      { 2018: 'Table 716.1(2)', 2021: 'Table 716.1(2)', 2024: 'Table 716.1(2)' },
      'secondary',
      '2026-11-25',
    ),
  },
} as const satisfies Readonly<Record<string, Limit>>;

export type LimitId = keyof typeof limits;

/** A limit's entries by edition year; `any` where its book is cited without editions. */
export function entriesOf(id: LimitId): Readonly<Record<string, LimitEntry>> {
  return limits[id].editions;
}

/**
 * The number an edition sets. Throws, naming value, edition and asker, when nobody entered that edition:
 * a silent fallback to another year would be a wrong answer in print.
 * A book the project does not adopt answers with its newest entry, because the rule that asks is off anyway.
 */
export function limitValue(id: LimitId, basis: CodeBasis, asker: string): number {
  return limitEntry(id, basis, asker).value;
}

export function limitEntry(id: LimitId, basis: CodeBasis, asker: string): LimitEntry {
  const limit: Limit = limits[id];
  if ('any' in limit.editions) return limit.editions.any;
  const editions: Readonly<Record<string, LimitEntry>> = limit.editions;
  const edition = basis[limit.book as 'ibc' | 'nfpa101' | 'nec'];
  if (edition === null) {
    const newest = Object.values(editions).at(-1);
    if (newest) return newest;
  }
  const entry = editions[String(edition)];
  if (!entry) {
    throw new Error(
      `${asker} asks for ${id} (${limit.what}) under ${books[limit.book]} ${edition}, which nobody entered.`,
    );
  }
  return entry;
}

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CodeBasis, defaultBasis } from '../codes/basis.ts';
import { decideAll } from '../decide/decide.ts';
import { neededInWords } from '../egress/exitsNeeded.ts';
import { assumed, known } from '../testing/facts.ts';
import type { FactValues } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Opening, Project, Space } from '../model/project.ts';
import { allFindings } from './alongTheWay.ts';
import { assessBuilding } from './building.ts';
import { type SpaceEgress, spaceEgress } from './spaceEgress.ts';

const ibcOnly: CodeBasis = { ...defaultBasis, ibc: 2021, nfpa101: null };
const both: CodeBasis = { ...ibcOnly, nfpa101: 2021 };

/** An ordinary door people leave the room by; 34 in clear were measured. */
const plain: FactValues = {
  doorType: 'single',
  egressRole: 'exitAccess',
  clearWidthIn: 34,
  latch: 'bored',
  panicPresent: false,
  leafMaterial: 'hollowMetal',
  frameMaterial: 'hollowMetal',
};
const { egressRole: _role, ...noRole } = plain;
type Door = readonly [mark: string, facts?: FactValues, more?: Partial<Opening>];

interface Given {
  readonly room?: Partial<Space>;
  readonly doors?: readonly Door[];
  readonly building?: FactValues;
  readonly basis?: CodeBasis;
}

function projectOf({ room = {}, doors = [['1']], building = {}, basis = ibcOnly }: Given): Project {
  const stated = (values: FactValues) =>
    Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)]));
  return {
    ...newProject('p', 'P'),
    basis,
    building: stated({ occupancyGroup: 'E', ...building }),
    spaces: {
      room: { ...newSpace('room', 'Music room'), ...room },
      hall: { ...newSpace('hall', 'Corridor'), kind: 'corridor' },
      lift: { ...newSpace('lift', 'Elevator'), kind: 'elevator' },
      street: { ...newSpace('street', 'Street'), kind: 'outside' },
    },
    openings: Object.fromEntries(
      doors.map(([mark, facts = plain, more = {}]) => [
        mark,
        {
          ...newOpening(mark, mark),
          fromSpaceId: 'hall',
          toSpaceId: 'room',
          facts: stated(facts),
          ...more,
        },
      ]),
    ),
  };
}
const all = (given: Given) => {
  const project = projectOf(given);
  return spaceEgress(assessBuilding(project, decideAll(project)));
};
function room(given: Given): SpaceEgress {
  const found = all(given).find((one) => one.space.id === 'room');
  if (!found) throw new Error('The room is not there.');
  return found;
}
const kinds = (egress: SpaceEgress) => egress.findings.map((one) => `${one.severity} ${one.kind}`);
const says = (egress: SpaceEgress) => egress.findings.map((one) => one.says).join(' ');

const music = { use: 'classroom', areaFt2: 40 * 28, commonPathFt: 40 } as const;
const dining = { use: 'assemblyTables', areaFt2: 4500 } as const;

describe('published worked examples, room and doors together', () => {
  test('W-01, trade article of Nov 2019, IBC 1004.5, 1006.2.1, 1010.2.9: a music room of 56 needs two ways out and panic hardware', () => {
    const one = room({ room: music });
    expect(one.load.people).toBe(56);
    expect([neededInWords(one.needed), one.found]).toEqual(['2', 1]);
    expect(one.panic?.asked).toBe(true);
    expect(kinds(one)).toContain('serious exitsShort');
    expect(says(one)).toContain('Music room: 56 people need 2 exits; 1 is found (1).');
    const two = room({ room: music, doors: [['1'], ['2']] });
    expect(two.found).toBe(2);
    expect(kinds(two)).not.toContain('serious exitsShort');
  });

  test('W-02, trade lesson, IBC Table 1006.2.1: 48 in a classroom may have one way out, within 75 ft of common path', () => {
    const at = (commonPathFt: number | null) => room({ room: { ...music, areaFt2: 960, commonPathFt } });
    expect(neededInWords(at(75).needed)).toBe('1');
    expect(kinds(at(75))).toEqual([]);
    expect(neededInWords(at(76).needed)).toBe('2');
    expect(neededInWords(at(null).needed)).toBe('1 or 2');
    expect(kinds(at(null))).toEqual(['note exitsOpen']);
    expect(says(at(null))).toContain('common path must be 75 ft or less; it is not measured');
    expect(at(75).panic?.asked).toBe(false);
  });

  test('W-03 with D-01, IBC 1005.3.2: 300 diners; doors of 34 in pass 170 each, 226 only with sprinklers and voice alarm', () => {
    const doors: readonly Door[] = [['1'], ['2']];
    const plainOnes = room({ room: dining, doors, building: { occupancyGroup: 'A-2' } });
    expect(plainOnes.capacity).toEqual({ people: 340, withoutLargest: 170, unknown: [] });
    expect(kinds(plainOnes)).not.toContain('serious capacityShort');
    const safe = { occupancyGroup: 'A-2', sprinklered: true, voiceAlarm: true } as const;
    expect(room({ room: dining, doors, building: safe }).capacity.people).toBe(452);
    const narrow = { ...plain, clearWidthIn: 29.9 };
    const short = room({
      room: dining,
      doors: [
        ['1', narrow],
        ['2', narrow],
      ],
      building: { occupancyGroup: 'A-2' },
    });
    expect(short.capacity.people).toBe(298);
    expect(kinds(short)).toContain('serious capacityShort');
    expect(says(short)).toContain('300 people, and the doors (1, 2) are wide enough for 298.');
  });
});

describe('ways out', () => {
  test('IBC 1005.5 from general knowledge: with the largest door lost half must remain', () => {
    const doors = (width: number): readonly Door[] => [
      ['1', { ...plain, clearWidthIn: 60 }],
      ['2', { ...plain, clearWidthIn: width }],
    ];
    const given = { room: { occupantLoad: 320 }, building: { occupancyGroup: 'B' } } as const;
    expect(kinds(room({ ...given, doors: doors(32) }))).toEqual([]);
    const lost = room({ ...given, doors: doors(31.8) });
    expect(lost.capacity.withoutLargest).toBe(159);
    expect(kinds(lost)).toContain('serious exitLost');
  });

  test.each<[string, FactValues | undefined, Partial<Opening>, string]>([
    ['an ordinary door', undefined, {}, 'counts'],
    ['one whose part is not surveyed', noRole, {}, 'perhaps'],
    ['one that does not say where it leads', undefined, { fromSpaceId: null }, 'perhaps'],
    ['an overhead door', { ...plain, doorType: 'overhead' }, {}, 'perhaps'],
    ['a turnstile', { ...plain, doorType: 'turnstile' }, {}, 'perhaps'],
    ['a sealed door', { ...plain, egressRole: 'sealedOff' }, {}, 'no'],
    ['a door into an elevator', undefined, { fromSpaceId: 'lift' }, 'no'],
    ['a door used to leave both ways', { ...plain, exitDirection: 'both' }, {}, 'counts'],
  ])('%s', (_what, facts, more, standing) => {
    expect(room({ doors: [['1', facts ?? plain, more]] }).ways.map((way) => way.standing)).toEqual([
      standing,
    ]);
  });

  test('a door that leads people into the room is none of its ways out, unless they leave both ways', () => {
    const turned = { fromSpaceId: 'room', toSpaceId: 'hall' };
    expect(room({ doors: [['1', plain, turned]] }).ways).toEqual([]);
    expect(room({ doors: [['1', plain, turned]] }).through).toEqual(['Corridor']);
    const bothWays = room({ doors: [['1', { ...plain, exitDirection: 'both' }, turned]] });
    expect(bothWays.ways.map((way) => way.opening.mark)).toEqual(['1']);
  });

  test('a door that may count makes the finding a note, with its name', () => {
    const egress = room({ room: music, doors: [['1'], ['2', noRole]] });
    expect([egress.found, egress.perhaps]).toEqual([1, 1]);
    expect(kinds(egress)).toContain('note exitsOpen');
    expect(kinds(egress)).not.toContain('serious exitsShort');
    expect(says(egress)).toContain('whether 2 counts is not known');
  });

  test('a width that nobody knows is asked for and not guessed', () => {
    const { clearWidthIn: _width, ...open } = plain;
    const egress = room({ room: { ...dining, occupantLoad: 200 }, doors: [['1'], ['2', open]] });
    expect(egress.capacity).toEqual({ people: 170, withoutLargest: 0, unknown: ['2'] });
    expect(kinds(egress)).toContain('note capacityOpen');
    expect(egress.ways[1]?.reasons[0]?.says).toBe(
      'Not known: the clear width, or else leaf width, leaf thickness, hanging.',
    );
  });

  test('a measured width wins over leaf and hinges; below 32 in it is serious, an estimate only asks to measure', () => {
    const leaf = { leafWidthIn: 34, leafThicknessIn: 1.75, hinges: 'butt' } as const;
    const { clearWidthIn: _width, ...open } = plain;
    const small = { ...music, areaFt2: 200 };
    const estimated = room({ room: small, doors: [['1', { ...open, ...leaf }]] });
    expect(estimated.narrowest).toEqual({ mark: '1', clearIn: 31.25, estimated: true });
    expect(kinds(estimated)).toEqual(['note doorNarrow']);
    const measured = room({ room: small, doors: [['1', { ...plain, ...leaf, clearWidthIn: 32 }]] });
    expect(measured.narrowest).toEqual({ mark: '1', clearIn: 32, estimated: false });
    expect(kinds(measured)).toEqual([]);
    const below = room({ room: small, doors: [['1', { ...plain, clearWidthIn: 31.9 }]] });
    expect(kinds(below)).toEqual(['serious doorNarrow']);
  });
});

describe('what the answer rests on', () => {
  test('NFPA 101 Table 7.3.3.1 from memory: a hospital without sprinklers takes 0.5 in a person, and the stricter code counts', () => {
    const hospital = { occupancyGroup: 'I-2', sprinklered: false } as const;
    const egress = room({ room: { occupantLoad: 60 }, building: hospital, basis: both });
    expect(egress.capacity.people).toBe(68);
    const lines = egress.ways[0]?.reasons.map((one) => `${one.says} ${one.rests}`) ?? [];
    expect(lines).toEqual([
      expect.stringMatching(/^34 in clear, measured/),
      expect.stringMatching(/34 in ÷ 0\.2 in a person = 170 people\. IBC 2021 1005\.3 .*read in the code/),
      expect.stringMatching(
        /34 in ÷ 0\.5 in a person = 68 people\. NFPA 101 2021 Table 7\.3\.3\.1; from general/,
      ),
    ]);
  });

  test('an assumed width says where it was taken from', () => {
    const project = projectOf({});
    const [door] = Object.values(project.openings);
    if (!door) throw new Error('No door.');
    const facts = { ...door.facts, clearWidthIn: assumed(34, 'plan A-601') };
    const given = { ...project, openings: { '1': { ...door, facts } } };
    const found = spaceEgress(assessBuilding(given, decideAll(given))).find((one) => one.space.id === 'room');
    expect(found?.ways[0]?.reasons[0]?.says).toBe('34 in clear, assumed: plan A-601.');
  });

  test('the group is that of its doors; where they differ it is not known, and over 49 people it need not be', () => {
    const doors: readonly Door[] = [
      ['1', { ...plain, occupancyGroup: 'B' }],
      ['2', { ...plain, occupancyGroup: 'M' }],
    ];
    const at = (occupantLoad: number) => room({ room: { occupantLoad, commonPathFt: 10 }, doors });
    expect(at(49).group.value).toBeUndefined();
    expect(at(49).group.reason.says).toBe('Its doors name different groups: B (1), M (2).');
    expect(neededInWords(at(49).needed)).toBe('1 or 2');
    expect(neededInWords(at(50).needed)).toBe('2');
    expect(at(50).panic).toBeNull();
  });

  test('no adopted code, no load: nothing is computed', () => {
    expect(room({ room: music, basis: { ...ibcOnly, ibc: null } }).needed).toBeNull();
    expect(room({}).needed).toBeNull();
    expect(kinds(room({}))).toEqual([]);
    expect(neededInWords(room({ room: { occupantLoad: 0 } }).needed)).toBe('0');
  });

  test('under NFPA 101 alone, 7.4.1.2 from memory: over 500 people three, over 1,000 four; one or two below', () => {
    const nfpa: CodeBasis = { ...both, ibc: null };
    const at = (occupantLoad: number) => neededInWords(room({ room: { occupantLoad }, basis: nfpa }).needed);
    expect([10, 500, 501, 1000, 1001].map(at)).toEqual(['1 or 2', '1 or 2', '3', '3', '4']);
    const ibc = (occupantLoad: number) => neededInWords(room({ room: { occupantLoad } }).needed);
    expect([500, 501, 1001].map(ibc)).toEqual(['2', '3', '4']);
  });

  test('panic hardware: the load of the room counts, also where the door names a smaller one', () => {
    const egress = room({
      room: music,
      doors: [
        ['1', { ...plain, occupantLoad: 20 }],
        ['2', { ...plain, latch: 'rimExit', panicPresent: true }],
      ],
    });
    expect(kinds(egress)).toEqual(['serious planDiffers', 'serious panicMissing']);
    expect(says(egress)).toContain('1: the 56 people of Music room require panic hardware here');
    expect(says(egress)).toContain('1: The spaces that leave through this opening hold more people');
    const { panicPresent: _panic, ...open } = plain;
    const unseen = room({
      room: music,
      doors: [
        ['1', { ...open, occupantLoad: 20 }],
        ['2', open],
      ],
    });
    expect(kinds(unseen)).toContain('note panicOpen');
    expect(kinds(room({ room: { ...music, areaFt2: 980 } })).join()).not.toContain('panic');
  });

  test('a corridor is not judged by its own load; stairs, elevators and the street are not listed', () => {
    const list = all({ room: music });
    expect(list.map((one) => one.space.id)).toEqual(['room', 'hall']);
    expect(list[1]).toMatchObject({ judged: false, needed: null, findings: [] });
  });

  test('a room no opening joins is a gap of the survey; one that nobody can leave is short of ways out', () => {
    expect(kinds(room({ room: music, doors: [] }))).toEqual([]);
    const inward = { fromSpaceId: 'room', toSpaceId: 'hall' };
    expect(kinds(room({ room: music, doors: [['1', plain, inward]] }))).toEqual(['serious exitsShort']);
  });

  test('what is serious stands among the findings of the building, notes do not', () => {
    const { panicPresent: _panic, ...open } = plain;
    const project = projectOf({ room: { ...music, occupantLoad: 60 }, doors: [['1', open]] });
    const building = assessBuilding(project, decideAll(project));
    const list = allFindings(building, [], spaceEgress(building)).map((one) => one.kind);
    expect(list).toEqual(expect.arrayContaining(['exitsShort', 'loadDiffers']));
    expect(list).not.toContain('panicOpen');
  });

  test.each<[string, Partial<Space>, FactValues, string]>([
    ['two loads of one room', { ...music, occupantLoad: 40 }, {}, 'occupantLoad'],
    ['a smaller load at the door', music, { occupantLoad: 20 }, 'occupantLoad'],
    ['the only door sealed off', music, { egressRole: 'sealedOff' }, 'egressRole'],
    ['two areas', music, { roomAreaFt2: 200 }, 'roomAreaFt2'],
  ])('%s: a contradiction at the opening and at the space', (_what, space, facts, field) => {
    const project = projectOf({ room: space, doors: [['1', { ...plain, ...facts }]] });
    const decisions = decideAll(project);
    const at = spaceEgress(assessBuilding(project, decisions)).find((one) => one.space.id === 'room');
    expect(at?.findings.filter(({ severity }) => severity !== 'note').map(({ kind }) => kind)).toEqual(
      expect.arrayContaining([
        field === 'occupantLoad' && !('occupantLoad' in facts) ? 'loadDiffers' : 'planDiffers',
      ]),
    );
    const fields = decisions
      .get('1')
      ?.findings.flatMap(({ rule, clause }) =>
        rule.id === 'B-95' && clause.effect === 'finding' ? [clause.field] : [],
      );
    expect(fields).toContain(field);
  });
});

describe('for any room', () => {
  const aDoor = fc
    .record({
      clearWidthIn: fc.option(fc.integer({ min: 20, max: 60 }), { nil: undefined }),
      egressRole: fc.constantFrom('exitAccess', 'sealedOff', undefined),
    })
    .map(({ clearWidthIn, egressRole }): FactValues => {
      const { clearWidthIn: _width, egressRole: _role, ...bare } = plain;
      return {
        ...bare,
        ...(clearWidthIn === undefined ? {} : { clearWidthIn }),
        ...(egressRole === undefined ? {} : { egressRole }),
      };
    });
  const asDoors = (facts: readonly FactValues[]): readonly Door[] =>
    facts.map((one, index) => [String(index), one]);

  test('one more door never lowers what its doors pass, also with the largest one lost', () => {
    fc.assert(
      fc.property(fc.array(aDoor, { maxLength: 3 }), aDoor, (facts, more) => {
        const before = room({ room: music, doors: asDoors(facts) });
        const after = room({ room: music, doors: asDoors([...facts, more]) });
        expect(after.capacity.people).toBeGreaterThanOrEqual(before.capacity.people);
        expect(after.capacity.withoutLargest).toBeGreaterThanOrEqual(before.capacity.withoutLargest);
        expect(after.found + after.perhaps).toBeGreaterThanOrEqual(before.found + before.perhaps);
      }),
      { numRuns: 60 },
    );
  });

  test('more area never lowers the ways out it needs', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12_000 }),
        fc.integer({ min: 0, max: 12_000 }),
        fc.option(fc.integer({ min: 0, max: 150 })),
        fc.constantFrom('B', 'E', 'S-1', 'H-3', 'R-2', 'I-2'),
        fc.option(fc.boolean(), { nil: undefined }),
        (area, more, commonPathFt, occupancyGroup, sprinklered) => {
          const at = (areaFt2: number) =>
            room({
              room: { use: 'classroom', areaFt2, commonPathFt },
              building: {
                occupancyGroup,
                ...(sprinklered === undefined ? {} : { sprinklered }),
              },
            }).needed;
          const [small, large] = [at(area), at(area + more)];
          expect(large?.from ?? 0).toBeGreaterThanOrEqual(small?.from ?? 0);
          expect(large?.to ?? 0).toBeGreaterThanOrEqual(small?.to ?? 0);
        },
      ),
      { numRuns: 150 },
    );
  });
});

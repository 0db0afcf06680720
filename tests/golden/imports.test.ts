// What the import makes of the words of door lists: cell by cell, heading by heading, and of whole lists.
import { readFileSync, writeFileSync } from 'node:fs';
import process from 'node:process';
import { expect, it } from 'vitest';
import { applyEdits } from '../../src/domain/commands/command.ts';
import {
  againInWords,
  compareAgain,
  importEdits,
  isFirst,
  isTaken,
  usualChoices,
} from '../../src/domain/import/again.ts';
import type { Imported, ImportOptions } from '../../src/domain/import/csv.ts';
import {
  buildingHeading,
  mappedHeaders,
  mappingFrom,
  readHeaders,
  useName,
} from '../../src/domain/import/headers.ts';
import { readOccupancyType, readRoomWords, type WordsRead } from '../../src/domain/import/roomWords.ts';
import { roomUseOf, spaceKindOf } from '../../src/domain/import/rooms.ts';
import { meaningInWords, undecidedInWords, undecidedRating } from '../../src/domain/import/words.ts';
import { newOpening, newProject, newSpace } from '../../src/domain/model/newProject.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { importRows } from '../../src/domain/testing/tables.ts';
import { inWords } from './imported.ts';

function read(header: string, rows: readonly string[], options: Partial<ImportOptions> = {}): Imported {
  let count = 0;
  const cells = (line: string) => line.split('|');
  return importRows(cells(header), rows.map(cells), { newId: () => `id${(count += 1)}`, ...options });
}

/** One column beside the mark, one cell a row; `beside` holds further cells. */
const columns: readonly (readonly [heading: string, words: string, beside?: string])[] = [
  [
    'Door Material',
    'HM|Hollow Metal|STEEL|steel door|SS|stainless steel|SCWD|solid core wood|Solid-Core|HCWD|hollow-core|hollow core wood|mineral core|narrow stile|medium-stile|wide stile|frameless glass|all-glass|Wood|WD|timber|Alum|AL|Gypsum | |PR HM|HWD|WDX|Metal|Alloy',
  ],
  [
    'Frame Material',
    'steel|HM|hollow metal|pressed steel|HMS|AL|ALUM|alum.|aluminum|WD|timber|Wood|hollowMetal|plastic| hollowMetal |galv steel|steel pipe|AL clad|total|WDX|XWD| odd ',
  ],
  [
    'Fire Rating',
    '90 MIN|1 HR|1-1/2 HR|3/4 HR|1 1/2 h|20|20 min S|45 S|3 hours|B|c|"A"|D label|E|F|--|–|N/A|NA|none|NR|0|100|75|perhaps|60 min.|1.5|UL 90| C |B labels|x--|--x',
  ],
  ['Hand', 'LH|rh|LHR|RHRA|left| lh '],
  ['Card Reader', 'yes|Y|X|CR|card reader|no|N|none|maybe|no CR|yes but|piano|nope| odd '],
  [
    'OperationType',
    'SINGLE_SWING_LEFT|double_door_single_swing|DOUBLE_PANEL_SINGLE_SWING_OPPOSITE_RIGHT|DOUBLE_SWING_RIGHT|DOUBLE_DOOR_DOUBLE_SWING|SLIDING_TO_LEFT|DOUBLE_PANEL_SLIDING|FOLDING_TO_RIGHT|DOUBLE_DOOR_FOLDING|REVOLVING|REVOLVING_VERTICAL|ROLLINGUP|LIFTING_VERTICAL_TOP|LIFTING_HORIZONTAL|SWING_FIXED_LEFT|NOTDEFINED|USERDEFINED| rollingup | odd ',
  ],
  ['Width', `3'-0"|36"|36|915 mm|0|4'-0"|4'-1"|PR 3'-0"|wide`],
  ['Door Material', 'stainless steel', 'Door Type:Steel flush'],
  ['Width', `3'-0"`, 'OperationType:SWING_FIXED_LEFT'],
  ['Width', 'wide', 'Overall Width (mm):1000'],
  ['Height', `7'-0"`, 'Door Type:Pair'],
  ['Width', ' ', 'Size:3070'],
  ['Width (in)', '36|48.1|48.2|72'],
  ['Width (mm)', '915|1220|1830'],
  ['Height', `7'-0"|84|20"`],
  ['Thk', `1 3/4"|1-3/4"|9"`],
  ['Overall Width (mm)', '1000|1900|10', 'OperationType:SINGLE_SWING_LEFT'],
  ['Overall Width (mm)', '1000', 'OperationType:DOUBLE_DOOR_SINGLE_SWING'],
  ['Overall Width (mm)', '1000', 'OperationType:SLIDING_TO_LEFT'],
  ['Overall Width', '1000|1000 mm'],
  ['Overall Height (mm)', '2134|x'],
  ['Overall Height (mm)', '2134', 'OperationType:DOUBLE_DOOR_SINGLE_SWING'],
  ['Size (mm)', '915 x 2134'],
  ['Size (in)', '48.1 x 84|PR 72 x 84'],
  ['Size', `3'-0" x 7'-0"|3'-0" x 7'-0" x 1 3/4"|PR 3'-0" x 7'-0"|6'-0" x 7'-0"|3070|big|36 x 84`],
  [
    'Door Type',
    'Pair|PR of doors|double|double acting|double-swing|double egress|double glazed|overhead|coiling|roll-up|sectional|folding|bi-fold|revolving|automatic sliding|sliding, auto|sliding|Flush|exterior flush|Exteriors|narrow stile entrance|Flush Wood - 0915 x 2134mm|Stall 0600 x 1524mm|Flush 1830 x 2134mm',
    `Width:3'-0"`,
  ],
  [
    'Door Type',
    'Flush Wood - 0915 x 2134mm|Pair 1830 x 2134mm|toilet partition|gate|Card reader door|915x2134mm|0915x 2134 mm|915 x2134mm',
  ],
  [
    'Remarks',
    'card reader at this door|no card reader|CARD-READERS both sides|see detail|pair of doors|Flush 0915 x 2134mm|exterior sealant|cardreader',
  ],
  ['IsExternal', 'TRUE|.T.|f|no|perhaps| t | n |trueish|untrue|piano|falsely', 'FireExit:true'],
  ['FireExit', 'true|false', 'IsExternal:no'],
  ['FireExit', 'true|false', 'IsExternal:yes'],
  ['FireExit', 'true'],
  ['HandicapAccessible', 'yes|no'],
  ['SelfClosing', 't|false'],
  ['SmokeStop', 'Y|n'],
  [
    'Floor',
    'Ground|First Floor|tenth|B|B2|basement 3|Level 4|L-1|3rd floor|story 7|Roof|12| Third Floor |Lab 2|Wing 2|2 East',
  ],
  ['Security need', 'High|unknown|High (assumed: plan)|very'],
];

const rooms =
  'Corridor|Corr.|Hallway|Women Toilet|Men’s Toilets|W Toilet|Jan|Janitor Closet|custodian cl.|Elev. Machine Room|Elevator Equip Rm|Elec|Main Electrical Room|Mech. Rm|central mechanical|Pharmacy|Pharm. Disp.|Vestibule|Entry Vest.|Lobby|Main Lobby|Comm Room|Telecom|IDF|Server Room|Conf. Rm|Conference|Classroom|Class Room 12|Chem Lab|Laboratory|Haz. Storage|Flammable Sto.|Storage|Dry Goods Stor.|A B C D Storage|Office|Asst. Manager Office|Kitchen|Office/Storage|Stair|Stairway 2|Stairs|Passage|Outside|exterior|Outdoors|Elevator 1|Roof|Atrium| Corridor |Class  Room| Outside |Bench outside|Outside air|Outdoor|Service elevator|Upper roof';

const counted =
  'Office|Lecture hall|CUSTODIAN’S|ELEC.RM|Storage#2|CLASS  ROOM|Office / |Office / Copy / Storage|Corridor / Office|Lobby / Flur|Lobby / Hall|Corridor / Flur|Flur / Corridor|Office / Storage|Auditorium / Chapel|Patient bed room|Chemical storage|Library reading room|Data center| ';
const groups = ' B |Group M|Group  F|GroupR|A3|A-3|S-1|Bakery|Business|13-15: Office';
const readInWords = (read: WordsRead) =>
  read.is === 'use' ? `${read.use}. ${read.doubt}` : read.is === 'open' ? `open. ${read.says}` : read.is;

const headings =
  'Mark|DOOR NO.|Opening No|Door #|Number|QTY|Level|To Room Name|To|From|Room No.|From Room Number|Opening Size|Door Size Width|Width (mm)|Width (in.)|Leaf Height|Door THK|Type|Description|Matl|Door Frame|Label|Fire|Swing|Access Control|Overall Width|Is External|IFC GUID|Choice by hand|Remarks|Notes|doorType|Door type|leafWidthIn|building sprinklered|building latch|Sprinklered throughout|latch|Latch|\uFEFFFinish||Door.No|Leaf width (in)|beautifulsprinklered|Closing.';

/** Whole lists: what rows do to each other. */
const lists: Readonly<
  Record<string, readonly [header: string, rows: readonly string[], options?: Partial<ImportOptions>]>
> = {
  'marks that stand twice': [
    'Mark|Floor|GlobalId',
    [
      '101|Ground|',
      '101|First|',
      '101|first|',
      '102||a',
      '102||b',
      '102||b',
      '||',
      '"103||',
      '104"||',
      '1\u200b05||',
      '101||',
      ' 106 || a ',
      '10"7|| c ',
      '101| Third |',
      '101| |',
      '101 (Third)||',
      '102||d',
      '102 (2)||',
      `${'m'.repeat(38)}||e`,
      `${'m'.repeat(38)}||f`,
      `201||${'g'.repeat(120)}`,
      `202||${'g'.repeat(121)}`,
    ],
  ],
  'marks by floor': [
    'Mark|Floor',
    ['1|Ground', '1|First', '2|Ground', '2|First', '3|', '3|First', '4|First', '4| first '],
  ],
  'floors from headings': [
    'Mark|Floor|Hand|Width',
    ['1||LH|', ' |FIRST FLOOR||', '2| |LH|', '3|Roof|LH|', '2|| RH |'],
  ],
  'a mark that is not there': ['Hand|Mark', ['LH']],
  'marks of the project': [
    'Mark|GlobalId|Floor',
    [
      '101|g1|',
      '101|g2|',
      'X|g3|',
      '103||',
      '102||',
      '104|g9|',
      '105||Ground',
      '105||First',
      '106|g5|A',
      '106|g6|B',
    ],
    {
      into: {
        floors: {},
        spaces: {},
        openings: {
          a: { ...newOpening('a', '101'), externalId: 'g1' },
          b: { ...newOpening('b', '201'), externalId: 'g2' },
          c: { ...newOpening('c', '103'), externalId: 'g3' },
          d: { ...newOpening('d', '102'), externalId: 'g4' },
          e: { ...newOpening('e', '104'), externalId: 'g7' },
          f: newOpening('f', '104 (2)'),
          g: newOpening('g', '105 (First)'),
          h: { ...newOpening('h', '106 (B)'), externalId: 'g8' },
        },
      },
    },
  ],
  'rows too long and too short': [
    'Mark|Hand',
    ['101|LH|surplus', '102|LH|  ', '103', '104|RH', '105|LH| |surplus'],
  ],
  'cells that are not there': ['Mark|fireRatingMin|Key', ['101', '102|90']],
  'a row that stands for several': [
    'Mark|Qty|Hand',
    ['101|2|LH', '102|1|LH', '103|two|LH', '104||LH', '105|x2|', '106|2x|', '107|12|', '108| 3 |'],
  ],
  'facts of the building': [
    'Mark|sprinklered|building fireAlarm',
    ['101|yes|yes', '102|yes|no', '103|no|', '104|x|x'],
  ],
  'columns that disagree': [
    'Mark|fireRatingMin|Fire Rating|Door Fire Rating|Width (in)|Leaf Width (mm)',
    [
      '101|90|1-1/2 HR|90|36|914.4',
      '102|90|45|45|36|915',
      '103||45|60|36|',
      '104|unknown|45|45||',
      '105|45|90|60||',
    ],
  ],
  'one fact in two columns': [
    'Mark|latch|fireRatingMin| fireRatingMin | Fire Rating | Label | closing ',
    [
      '101|unknown|90|x||| odd ',
      '102|unknown|90|||| ',
      '103|unknown|90|60|||',
      '104|unknown|90||60||',
      '105|unknown|||60|45|',
    ],
  ],
  'several facts in two columns each': [
    'Mark| fireRatingMin |Fire Rating| leafWidthIn |Width (in)',
    ['101|90|60|36|34', '102||60|36|34', '103|60|60|36|34', '104|90|60||'],
  ],
  'notes of several columns': [
    'Mark|Notes|Remarks| Lock | Width ',
    [`101| seen | | x | wide `, '102', '103| |why||'],
  ],
  'what rooms say beside facts': [
    'Mark|To Room Name|roomUse|egressRole|exterior|Door Type',
    [
      '101|Kitchen|office|||',
      '102|Stair||exteriorExit||',
      '103|Stair|||yes|',
      '104|Stair|||no|',
      '105|Stair|||unknown|',
      '106|Elec Room||||Pair',
      '107|Hall|||no|',
    ],
  ],
  'a choice by hand': [
    'Mark|Choice by hand|Reason of the choice|Chosen by|Chosen at',
    [
      '101|magnet/safe/sensor|as built|AB|2026-03-02T10:00:00.000Z',
      '102|magnet/safe/sensor||AB|2026-03-02T10:00:00.000Z',
      '103| |x||',
      '104|magnet/safe/sensor|as built||',
      '105| magnet/safe/sensor |as built|AB| 2026-03-02T10:00:00.000Z ',
    ],
  ],
  'a choice without its columns': ['Mark|Choice by hand', ['101|magnet/safe/sensor']],
  'a choice without a reason': [
    'Mark|Choice by hand|Chosen at',
    ['101|magnet/safe/sensor|2026-03-02T10:00:00.000Z'],
  ],
  'a choice without a time': [
    'Mark|Choice by hand|Reason of the choice',
    ['101|magnet/safe/sensor|as built'],
  ],
  'a choice that nobody signed': [
    'Mark|Choice by hand|Reason of the choice|Chosen at',
    ['101|magnet/safe/sensor|as built|2026-03-02T10:00:00.000Z'],
  ],
  places: [
    'Mark|Floor|From Room Name|From Room No.|To Room Name|To Room No.|Door Type',
    [
      '101|Ground|Corridor|100|Office|101|Flush',
      '102|Ground|Office|101|Corridor|100|Flush',
      '103|First|Outside||Stair|S1|exterior',
      '104|First|Corridor|200|Stair|S1|Flush',
      `105|First|${'x'.repeat(121)}||Storage|7|Flush`,
      `106|First|${'x'.repeat(60)}|9|Storage|7|Flush`,
      '107|Second|Roof||Elevator 1||Flush',
      '108|Basement|||Kitchen||Pair',
      '109|Ground|||Lobby||exterior',
      '110| |Stair|S2|Outside||Flush',
      '111|Ground| | 7 | Mail |8|Flush',
      '112|Ground|Lobby||Stair|S3|Flush',
      `113|First|${'y'.repeat(60)}| |Storage|7|Flush`,
      `114|First| ${'z'.repeat(120)} ||Storage|7|Flush`,
    ],
  ],
  'places under other headings': [
    'Mark|To|Adjoining Room Name|Leads to|Exterior',
    ['101|Corridor|Office||', '102||Corridor|Mail room|', '103|Hall|||yes'],
    { columns: { 'leads to': 'roomNumber' } },
  ],
  'a room that somebody mapped': [
    'Mark|Leads to|Adjoining Room Name|Exterior',
    ['101|Corridor|Conference|', '102|Conference||yes', '103|Stair|Outside|'],
    { columns: { 'leads to': 'room' } },
  ],
  'words that somebody decided': [
    'Mark|Fire Rating',
    ['101|B', '102|--', '103|C', '104|B'],
    { words: { 'fire rating: B': '90', 'fire rating: --': '0', 'fire rating: C': '60' } },
  ],
  'columns that somebody mapped': [
    'Door Tag|Width|Wd|Comment',
    [`101|3'-0"|x|y`],
    { columns: { 'door tag': 'mark', wd: 'width', comment: 'fact:latch' } },
  ],
  'no column of marks': ['Hand|Width', ['LH|36']],
};

function again(): readonly string[] {
  const base = newProject('p', 'P');
  const known = (value: unknown, at?: string) => ({
    is: 'known',
    value,
    ...(at === undefined ? {} : { at }),
  });
  const project = {
    ...base,
    building: { sprinklered: known(true) },
    floors: { f: { id: 'f', name: 'Ground', level: 0 } },
    spaces: { s: { ...newSpace('s', 'Office'), floorId: 'f' } },
    openings: {
      a: {
        ...newOpening('a', '101'),
        floorId: 'f',
        toSpaceId: 's',
        notes: 'seen',
        facts: {
          handing: known('LH'),
          fireRatingMin: known(90, '2026-03-02T10:00:00.000Z'),
          leafMaterial: { is: 'assumed', value: 'hollowMetal', from: 'plan' },
          latch: { is: 'unknown' },
        },
      },
      b: { ...newOpening('b', '102'), externalId: 'g' },
      c: newOpening('c', '103'),
      d: newOpening('d', '104'),
    },
  } as unknown as Project;
  const imported = read(
    'Mark|Floor|To|Hand|fireRatingMin|Door Material|latch|Remarks|GlobalId|sprinklered|Choice by hand|Reason of the choice|Chosen at',
    [
      '101|Second|Store|RH|45|SCWD|mortise| seen |x|no|magnet/safe/sensor|why|2026-03-02T10:00:00.000Z',
      '102x||||||||g||||',
      '103|||||||new note|||||',
      '105|Ground|Office||||||||||',
    ],
    { into: project },
  );
  const found = compareAgain(project, imported);
  const told = (label: string, edits: ReturnType<typeof importEdits>) => [
    `${label}: ${edits.map((edit) => `${edit.kind} ${'id' in edit ? edit.id : ''}${'fact' in edit ? edit.fact : ''}`).join(', ')}`,
    `  valid: ${applyEdits(project, edits).ok}`,
  ];
  const all = Object.fromEntries(found.changed.map(({ key }) => [key, true]));
  const none = Object.fromEntries(found.changed.map(({ key }) => [key, false]));
  return [
    againInWords(found),
    `first: ${isFirst(imported)}, ${isFirst(read('Mark', ['1']))}`,
    ...found.changed.map(
      (one) =>
        `${one.mark}, ${one.what} (${one.key}, ${one.openingId}): ${one.mine} → ${one.theirs}${one.stays === '' ? '' : `, stays: ${one.stays}`}; ${isTaken(one, usualChoices) ? 'taken' : 'left'}`,
    ),
    `gone: ${found.gone.map(({ mark }) => mark).join()}; nothing met: ${compareAgain(project, read('Mark', ['9'])).gone.length}`,
    ...told('usual', importEdits(project, imported)),
    ...told('all taken', importEdits(project, imported, { ...usualChoices, takes: all, removeGone: true })),
    ...told('none taken', importEdits(project, imported, { ...usualChoices, takes: none })),
  ];
}

function text(): string {
  const told: string[] = [];
  for (const [heading, words, beside] of columns) {
    const [other = '', cell = ''] = beside?.split(':') ?? [];
    told.push('', `## ${heading}${beside === undefined ? '' : ` beside ${beside}`}`);
    for (const word of words.split('|')) {
      const header = beside === undefined ? `Mark|${heading}` : `Mark|${heading}|${other}`;
      const row = beside === undefined ? `1|${word}` : `1|${word}|${cell}`;
      told.push(`${word} → ${inWords(read(header, [row])).join(' ‖ ')}`);
    }
  }
  told.push('', '## Rooms');
  for (const name of rooms.split('|')) {
    told.push(
      `${name} → ${spaceKindOf(name)}, ${roomUseOf(name, true)}, of a pair ${roomUseOf(name, false)}`,
    );
  }
  told.push('', '## What a room counts as');
  for (const name of counted.split('|')) told.push(`${name} → ${readInWords(readRoomWords(name))}`);
  told.push('', '## Occupancy types');
  for (const name of groups.split('|')) told.push(`${name} → ${readInWords(readOccupancyType(name))}`);
  told.push('', '## Headings');
  const names = headings.split('|');
  for (const name of names)
    told.push(
      `${name} → ${readHeaders([name])
        .map(({ use }) => useName(use))
        .join()}`,
    );
  told.push(
    `together → ${readHeaders(names)
      .map(
        ({ use }) =>
          `${useName(use)}${use.kind === 'unused' && use.sameAs !== undefined ? ` as ${use.sameAs}` : ''}`,
      )
      .join(', ')}`,
  );
  for (const chosen of ['mark', 'building:sprinklered', 'fact:latch', 'nonsense', 'notes']) {
    const mapped = mappedHeaders(['Mark', 'Tag', 'Notes', 'latch'], { tag: chosen });
    told.push(`Tag taken for ${chosen} → ${mapped.map(({ use }) => useName(use)).join(', ')}`);
  }
  const byHand = [
    mappedHeaders(['Mark', 'Number'], { mark: 'unused' }),
    mappedHeaders(['Mark', 'Fire Rating', 'Label', 'x'], { x: 'unused' }),
    readHeaders([buildingHeading('sprinklered')]),
  ];
  for (const mapped of byHand)
    told.push(`by hand → ${mapped.map(({ use }) => JSON.stringify(use)).join(', ')}`);
  for (const kept of ['{"a":"mark","b":1}', 'null', '3', '{', '["x"]', '"abc"']) {
    told.push(`mapping ${kept} → ${JSON.stringify(mappingFrom(kept))}`);
  }
  for (const word of ['B', '--'].flatMap((one) => undecidedRating('Label', one) ?? [])) {
    told.push(
      `${undecidedInWords(word)} → ${[undefined, 0, 90].map((minutes) => meaningInWords(minutes, word)).join(' | ')}`,
    );
  }
  for (const [name, [header, rows, options]] of Object.entries(lists)) {
    told.push('', `## ${name}`, ...inWords(read(header, rows, options)));
  }
  told.push('', '## A newer list', ...again(), '');
  return told.join('\n').trimStart();
}

it('what is made of words and lists, is what was read and accepted', () => {
  const file = new URL('imports.txt', import.meta.url);
  if (process.env['LATCHWARD_ACCEPT'] !== undefined) writeFileSync(file, text());
  expect(text().split('\n'), 'Read the difference; accept it with LATCHWARD_ACCEPT=1.').toEqual(
    readFileSync(file, 'utf8').split('\n'),
  );
});

import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { decideAll } from '../../domain/decide/decide.ts';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { openingLines } from '../../domain/sets/openingLines.ts';
import { withoutGuard } from '../../domain/text/formulaGuard.ts';
import { hardwareSets, setInWords } from '../../domain/sets/sets.ts';
import { aProject } from '../../domain/testing/arbitraries.ts';
import { setSheet } from '../sheets/setSheet.ts';
import { openingLineColumns, openingLinesCsv, setColumns, setsCsv } from './setsCsv.ts';

const project = {
  ...newProject('p', 'Project'),
  openings: {
    a: {
      ...newOpening('a', '=1+2'),
      facts: {
        doorType: known('single' as const),
        leafMaterial: known('hollowMetal' as const),
        frameMaterial: known('hollowMetal' as const),
        latch: known('mortise' as const),
        readerSides: known('none' as const),
      },
    },
  },
};
const decisions = decideAll(project);
const read = (text: string) => Papa.parse<string[]>(text, { skipEmptyLines: true });

describe('CSV of the hardware sets', () => {
  it('has one row per line of a set', () => {
    const sets = hardwareSets(project, decisions);
    const parsed = read(setsCsv(sets, []));
    expect(parsed.data[0]).toEqual([...setColumns]);
    const rows = sets.reduce((sum, set) => sum + set.lines.length + set.siteWork.length, 0);
    expect(parsed.data).toHaveLength(1 + rows);
    expect(parsed.data[1]?.[0]).toBe('HS-01');
    expect(parsed.data[1]?.at(-1)).toBe("'=1+2");
  });

  it('leaves quantities of included lines empty and names what must not be ordered yet', () => {
    const [set] = hardwareSets(project, decisions);
    if (!set) throw new Error('no set');
    const [line] = set.lines;
    if (!line) throw new Error('no line');
    const openings = [
      { id: 'a', mark: '101', order: 'complete' as const },
      { id: 'b', mark: '102', order: 'incomplete' as const },
    ];
    const lines = [line, { ...line, counting: 'included' as const }, { ...line, counting: 'kept' as const }];
    const { data } = read(setsCsv([{ ...set, openings, lines, siteWork: [] }], []));
    const column = (name: (typeof setColumns)[number]) =>
      data.slice(1).map((row) => row[setColumns.indexOf(name)]);
    expect(column('New (quantity)')).toEqual([String(line.total), '', '']);
    expect(column('Each (per opening)')).toEqual([String(line.each), '', '']);
    expect(column('Counted')).toEqual(['By itself', 'Included in another line', 'Kept in place']);
    expect(column('Do not order yet')).toEqual(['102', '102', '102']);
  });

  it('has a row for work at the openings that need it, without a number of pieces', () => {
    const [set] = hardwareSets(project, decisions);
    if (!set) throw new Error('no set');
    const openings = [
      { id: 'a', mark: '101', order: 'complete' as const },
      { id: 'b', mark: '102', order: 'incomplete' as const },
    ];
    const siteWork = [{ trade: 'Locksmith', says: 'Cut the edge.', ruleId: 'F-01', marks: ['102'] }];
    const { data } = read(setsCsv([{ ...set, openings, lines: [], siteWork }], []));
    const cell = (column: (typeof setColumns)[number]) => data[1]?.[setColumns.indexOf(column)];
    expect(
      ['Item', 'Openings', 'New (quantity)', 'Do not order yet', 'Marks'].map((one) => cell(one as never)),
    ).toEqual(['Cut the edge.', '1', '', '102', '102']);
  });

  it('lists what is shared once, without a number of pieces', () => {
    const [set] = hardwareSets(project, decisions);
    const { name, standard, trade } = set?.lines[0] ?? { name: '', standard: '', trade: '' };
    const shared = [
      { item: 'lockSupply' as const, name, detail: '24 V DC', standard, trade, marks: ['101', '102'] },
    ];
    const { data } = read(setsCsv([], shared));
    const cell = (column: (typeof setColumns)[number]) => data[1]?.[setColumns.indexOf(column)];
    expect(cell('Set')).toBe('Shared');
    expect(cell('Openings')).toBe('2');
    expect(cell('New (quantity)')).toBe('');
    expect(cell('Marks')).toBe('101; 102');
  });
});

describe('CSV of the hardware by opening', () => {
  it('adds up to the totals of the sets, item by item, as the files and the print say them', () => {
    fc.assert(
      fc.property(aProject, (drawn) => {
        const sensible = { ...drawn, amendments: [] };
        const all = decideAll(sensible);
        const sets = hardwareSets(sensible, all);
        const bySet = sums(setsCsv(sets, []), setColumns, 'New (quantity)');
        const lines = openingLines(sensible, all, sets);
        expect(sums(openingLinesCsv(lines), openingLineColumns, 'New (quantity)')).toEqual(bySet);
        const printed = new Map<string, number>();
        // On paper number and revision stand together, in the file in columns of their own.
        const numbers = new Map(sets.map((set) => [setInWords(set), set.id]));
        for (const block of setSheet(sensible, all).sets) {
          for (const line of block.blocks.flatMap((one) => one.lines)) {
            // A job of site work is no item of the sets.
            const pieces = line.section === '' ? Number.NaN : Number(line.newSays || Number.NaN);
            if (!Number.isNaN(pieces)) add(printed, `${numbers.get(block.id)} ${line.name}`, pieces);
          }
        }
        expect(printed).toEqual(bySet);
      }),
      { numRuns: 60 },
    );
  });

  it('says who supplies, installs and wires a line, in which finish and under which section', () => {
    const said = {
      id: 'mechanicalLock',
      finish: '626',
      keySet: 'AA1',
      suppliedBy: 'Owner',
      installedBy: '',
      wiredBy: '',
    };
    const stated = { ...project, itemBook: { mechanicalLock: said } };
    const { data } = read(setsCsv(hardwareSets(stated, decisions), []));
    const at = (column: (typeof setColumns)[number]) => setColumns.indexOf(column);
    const row = data.find((one) => one[at('Item')] === 'Mechanical lockset');
    expect(
      (['Block', 'Finish', 'Supplied by', 'Installed by', 'Wired by', 'Section'] as const).map(
        (one) => row?.[at(one)],
      ),
    ).toEqual([
      'Goods',
      '626 satin chromium on brass or bronze',
      'Owner',
      'Locksmith',
      '',
      '08 71 00 Door hardware',
    ]);
    const before = read(setsCsv(hardwareSets(project, decisions), [])).data;
    expect(before.find((one) => one[at('Item')] === 'Mechanical lockset')?.[at('Finish')]).toBe('not stated');
  });

  it('says of each line at which opening, and whether it may be ordered', () => {
    const sets = hardwareSets(project, decisions);
    const { data } = read(openingLinesCsv(openingLines(project, decisions, sets)));
    expect(data[0]).toEqual([...openingLineColumns]);
    expect(data.slice(1).map((row) => row[0])).toEqual(data.slice(1).map(() => "'=1+2"));
    expect(data.slice(1).map((row) => row[2])).toEqual(data.slice(1).map((_, index) => String(index + 1)));
    expect(data[1]?.at(-1)).toBe('Not settled, do not order');
  });
});

function add(into: Map<string, number>, key: string, pieces: number): void {
  into.set(key, (into.get(key) ?? 0) + pieces);
}

/** Pieces by set and item, as somebody sums them up in a spreadsheet. */
function sums(text: string, columns: readonly string[], quantity: string): Map<string, number> {
  const found = new Map<string, number>();
  const at = (name: string) => columns.indexOf(name);
  for (const row of read(text).data.slice(1)) {
    const pieces = row[at(quantity)];
    if (pieces !== '') add(found, `${withoutGuard(row[at('Set')] ?? '')} ${row[at('Item')]}`, Number(pieces));
  }
  return found;
}

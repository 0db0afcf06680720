import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { decideAll } from '../../domain/decide/decide.ts';
import { known } from '../../domain/testing/facts.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { openingColumns, scheduleRows } from '../../domain/schedules/openings.ts';
import { harmless, withoutGuard } from '../../domain/text/formulaGuard.ts';
import { csvText } from './cells.ts';
import { scheduleCsv } from './scheduleCsv.ts';

const project = {
  ...newProject('p', 'Project'),
  openings: {
    a: {
      ...newOpening('a', '=1+2'),
      notes: 'He said "12 in, or so"\r\nand left; ½ × ü',
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
const rows = scheduleRows(project, decisions);
const read = (text: string) => Papa.parse<string[]>(text, { skipEmptyLines: true });

describe('CSV of the opening schedule', () => {
  it('reads back cell for cell', () => {
    const parsed = read(scheduleCsv(rows));
    expect(parsed.errors).toEqual([]);
    expect(parsed.data[0]).toEqual(Object.values(openingColumns));
    const [, row] = parsed.data;
    const cell = (heading: string) => row?.[parsed.data[0]?.indexOf(heading) ?? -1];
    expect(cell('Mark')).toBe("'=1+2");
    expect(cell('Notes')).toBe('He said "12 in, or so"\r\nand left; ½ × ü');
    expect(cell('Door type')).toBe('Single swinging leaf');
  });

  it('ends every line with CR LF and begins with a byte-order mark', () => {
    const text = scheduleCsv([]);
    expect(text.startsWith('\uFEFFMark,')).toBe(true);
    expect(text.endsWith('Notes\r\n')).toBe(true);
  });

  it('makes every formula start harmless and gives back the very text', () => {
    for (const start of ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠', "'=", "''-"])
      expect(harmless(`${start}x`)).toBe(`'${start}x`);
    expect(harmless("'quoted'")).toBe("'quoted'");
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'binary', maxLength: 8 }), { minLength: 2, maxLength: 4 }),
        (cells) => {
          const parsed = Papa.parse<string[]>(csvText(cells, [cells]), { delimiter: ',', newline: '\r\n' });
          expect(parsed.data[1]).toEqual(cells.map(harmless));
          for (const cell of parsed.data[1] ?? []) expect(cell).not.toMatch(/^[=+\-@\t\r]/);
          const plain = cells.filter((cell) => !cell.startsWith("'"));
          expect(plain.map((cell) => withoutGuard(harmless(cell)))).toEqual(plain);
        },
      ),
    );
  });
});

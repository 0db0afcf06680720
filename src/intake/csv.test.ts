import { describe, expect, it } from 'vitest';
import { readCsv } from './csv.ts';

describe('reading a CSV', () => {
  it.each([
    ['commas', 'mark,notes\r\n1,"a,b"\r\n'],
    ['semicolons', 'mark;notes\n1;a,b\n'],
    ['tabs', 'mark\tnotes\n1\ta,b\n'],
    ['a byte-order mark', '\uFEFFmark,notes\n1,"a,b"\n'],
  ])('%s', (_name, text) => {
    expect(readCsv(text)).toMatchObject({
      ok: true,
      grid: { rows: [{ cells: ['mark', 'notes'] }, { cells: ['1', 'a,b'] }] },
    });
  });

  it('keeps blank lines, so that rows are counted as in the file', () => {
    const read = readCsv('mark,notes\n\n1,a\n');
    expect(read.ok && read.grid.rows.length).toBe(3);
  });

  it.each([
    ['nothing', '', 'The file is empty.'],
    ['blanks', ' \n ', 'The file is empty.'],
    ['an open quotation mark', 'mark,notes\n1,"a\n2,b\n', 'A quotation mark is not closed'],
    ['zero bytes', 'm\u0000a\u0000', 'not plain text'],
  ])('%s is refused with a sentence', (_name, text, says) => {
    const read = readCsv(text);
    expect(read.ok ? '' : read.says).toContain(says);
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { htmlTable, tsvText } from '../../src/exporting/csv/cells.ts';
import { readPasted } from '../../src/intake/csv.ts';

const aCell = fc.oneof(
  fc.string({ maxLength: 6 }),
  fc.constantFrom('', '=1+2', "'=1", '-', '"', 'a\tb', 'two\nlines', '3\'-0"', '“', '"a" b'),
);
const aTable = fc
  .integer({ min: 1, max: 4 })
  .chain((wide) =>
    fc.array(fc.array(aCell, { minLength: wide, maxLength: wide }), { minLength: 1, maxLength: 4 }),
  );

test('cells come back from the clipboard as they went', () => {
  fc.assert(
    fc.property(aTable, (cells) => {
      expect(readPasted(tsvText(cells))).toEqual(cells);
    }),
    {
      numRuns: 300,
    },
  );
});

test('a spreadsheet’s own text is read: quoted cells of several lines, inch marks that are no quotes', () => {
  expect(readPasted('101\t"Two\nlines ""here"""\r\n102\t3\'-0"\r\n')).toEqual([
    ['101', 'Two\nlines "here"'],
    ['102', '3\'-0"'],
  ]);
  expect(readPasted('"A wing\t36\n102\tx')).toEqual([
    ['"A wing', '36'],
    ['102', 'x'],
  ]);
});

test('no text becomes a tag of the table', () => {
  expect(htmlTable([['<b>&"x"</b>', 'a\nb']])).toBe(
    '<table><tr><td>&lt;b&gt;&amp;&quot;x&quot;&lt;/b&gt;</td><td>a<br>b</td></tr></table>',
  );
});

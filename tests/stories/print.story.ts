import { readFile } from 'node:fs/promises';
import { expect, test } from 'playwright/test';
import { standingCautions } from '../../src/domain/explain/cautions.ts';
import { type PdfPage } from './pages/pdf.ts';
import { printPage } from './pages/print.ts';
import { newWindow } from './pages/window.ts';

interface Demo {
  readonly project: { readonly name: string; readonly openings: Record<string, { readonly mark: string }> };
}
const demoFile = new URL('../../demo-data/demo-building.json', import.meta.url);
const demo = (JSON.parse(await readFile(demoFile, 'utf8')) as Demo).project;
const marks = Object.values(demo.openings).map((opening) => opening.mark);

// Laying out and reading back dozens of pages takes long on a busy machine.
test.setTimeout(90_000);

const heads = ['MARK', 'FROM', 'TO', 'DOOR TYPE', 'HAND', 'LABEL', 'LOCKED BY', 'WAY OUT', 'FLAGS'];

/** Words that begin within the first half inch of the printed width: the column of marks. */
const firstColumn = (page: PdfPage) =>
  page.words.filter((word) => word.x < 48).map((word) => word.text.trim());

function expectEveryPageToStandAlone(pages: readonly PdfPage[]) {
  pages.forEach((page, index) => {
    expect(page.text).toContain(`Page ${index + 1} of ${pages.length}`);
    expect(page.text).toContain(demo.name);
    for (const caution of standingCautions) expect(page.text).toContain(caution);
  });
}

test('an estimator prints the schedule', async ({ context }) => {
  const { page } = await newWindow(context);
  const print = printPage(page);
  await print.open();
  await print.choose('Door schedule', 'Hardware sets', 'Review register', 'Legend');
  const pages = await print.print();
  expect(pages.length).toBeGreaterThan(1);
  expectEveryPageToStandAlone(pages);

  const schedule = pages.filter((one) => one.width > one.height && one.width === 17);
  expect(schedule.length).toBeGreaterThan(1);
  expect(schedule).toEqual(pages.slice(0, schedule.length));
  for (const one of schedule) for (const head of heads) expect(one.text.toUpperCase()).toContain(head);
  const printed = schedule.flatMap(firstColumn).filter((word) => marks.includes(word));
  expect(printed.toSorted()).toEqual(marks.toSorted());

  const titles = schedule[0]?.text ?? '';
  for (const words of [demo.name, 'IBC 2021', 'Code basis', 'Prepared by']) {
    expect(titles.toLowerCase()).toContain(words.toLowerCase());
  }
  const sheets = ['Hardware sets', 'Review register', 'Legend'];
  for (const sheet of sheets) expect(pages.some((one) => one.text.includes(sheet))).toBe(true);
});

test('an estimator prints the schedule on the paper of the office, with every mark whole', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  const print = printPage(page);
  await print.open();
  await print.choose('Door schedule');
  for (const [name, width] of [
    ['A3 landscape', 420 / 25.4],
    ['Letter landscape', 11],
  ] as const) {
    await print.paper(name);
    const pages = await print.print();
    expectEveryPageToStandAlone(pages);
    for (const one of pages) expect(one.width).toBeCloseTo(width, 1);
    const printed = pages.flatMap(firstColumn).filter((word) => marks.includes(word));
    expect(printed.toSorted()).toEqual(marks.toSorted());
  }
});

test('an installer takes along the sheets of the openings that are shown', async ({ context }) => {
  const window = await newWindow(context);
  await window.find('Stair A');
  const print = printPage(window.page);
  await print.open();
  await print.choose('Opening sheets');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  for (const one of pages) {
    expect(one.text).toMatch(/Stair A/);
    expect(one.text).toMatch(/Signature/);
    // Each page says whose it is, also the second one of an opening.
    expect(firstColumn(one).some((word) => marks.includes(word))).toBe(true);
  }
});

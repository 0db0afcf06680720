import { readFile } from 'node:fs/promises';
import { expect, test as alone } from 'playwright/test';
import { standingCautions } from '../../src/domain/text/cautions.ts';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { testColumns } from '../../src/exporting/sequence/acceptance.ts';
import { testSheets } from '../../src/exporting/sequence/sheets.ts';
import { sequencePages } from '../../src/exporting/sheets/sequencePages.ts';
import { openingPage } from './pages/opening.ts';
import { fillOf, type PdfPage } from './pages/pdf.ts';
import { printPage } from './pages/print.ts';
import { lookAt, test } from './pages/reader.ts';
import { newWindow } from './pages/window.ts';

const demoFile = new URL('../../demo-data/demo-building.json', import.meta.url);
const demo = (JSON.parse(await readFile(demoFile, 'utf8')) as { project: Project }).project;
const marks = Object.values(demo.openings).map((opening) => opening.mark);

// Laying out and reading back dozens of pages takes long on a busy machine.
alone.setTimeout(90_000);

const heads = ['MARK', 'FROM', 'TO', 'DOOR TYPE', 'HAND', 'LABEL', 'LOCKED BY', 'EGRESS', 'FLAGS'];

/** Words that begin within the first half inch of the printed width: the column of marks. */
const firstColumn = (page: PdfPage) =>
  page.words.filter((word) => word.x < 48).map((word) => word.text.trim());

const floorNames = Object.values(demo.floors).map((floor) => floor.name);

/** Heads of floors and hardware sets that are the last thing on their page, above the foot. */
function lonelyHeads(page: PdfPage, index: number): readonly string[] {
  const footTop = 0.75 * 72;
  const lowest = Math.min(...page.words.map((word) => word.y).filter((y) => y > footTop));
  const last = page.words.filter((word) => Math.abs(word.y - lowest) < 3).map((word) => word.text.trim());
  const heads = last.filter((text) => floorNames.includes(text) || /^HS-\d+$/.test(text));
  // A row of the schedule names a set too; it is no head, because its mark stands on the same line.
  return heads.length > 0 && last.length <= 3 ? [`page ${index + 1}: ${last.join(' ')}`] : [];
}

function expectEveryPageToStandAlone(pages: readonly PdfPage[]) {
  pages.forEach((page, index) => {
    expect(page.text).toContain(`Page ${index + 1} of ${pages.length}`);
    expect(page.text).toContain(demo.name);
    for (const caution of standingCautions) expect(page.text).toContain(caution);
  });
}

test('an estimator prints the schedule', async ({ page }) => {
  const print = printPage(page);
  await print.open();
  await print.choose('Door schedule', 'Hardware sets', 'Review register', 'Legend');
  const pages = await print.print();
  expect(pages.length).toBeGreaterThan(1);
  expectEveryPageToStandAlone(pages);

  // A set is not parted from its lines: below its number, what it is made of begins on the same page.
  for (const one of pages) {
    const numbers = one.words.flatMap(({ text, x }, at) =>
      x < 48 && /^HS-\d+$/.test(text.trim()) ? [at] : [],
    );
    const below = one.words.slice(numbers.at(-1)).map(({ text }) => text);
    if (numbers.length > 0) expect(below.join(' ').toUpperCase(), one.text).toContain('GOODS');
  }

  const schedule = pages.filter((one) => one.width > one.height && one.width === 17);
  expect(schedule.length).toBeGreaterThan(1);
  expect(schedule).toEqual(pages.slice(0, schedule.length));
  for (const one of schedule) for (const head of heads) expect(one.text.toUpperCase()).toContain(head);
  const printed = schedule.flatMap(firstColumn).filter((word) => marks.includes(word));
  expect(printed.toSorted()).toEqual(marks.toSorted());

  // Small letters are spaced by their pairs, and what reads the page back may take that for a gap.
  const plain = (text: string) => text.toLowerCase().replaceAll(' ', '');
  const titles = plain(schedule[0]?.text ?? '');
  for (const words of [demo.name, 'IBC 2021', 'Code basis', 'Prepared by']) {
    expect(titles).toContain(plain(words));
  }
  const sheets = ['Hardware sets', 'Review register', 'Legend'];
  for (const sheet of sheets) expect(pages.some((one) => one.text.includes(sheet))).toBe(true);
  expect(pages.flatMap(lonelyHeads)).toEqual([]);
});

test('an estimator prints the schedule on the paper of the office, with every mark whole', async ({
  page,
}) => {
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

alone(
  'an estimator fixes the set numbers: they outlast a reload, a new set gets the next, undo takes them back',
  async ({ context }) => {
    const window = await newWindow(context);
    const { page } = window;
    const print = printPage(page);
    await print.open();
    const numbers = page.getByRole('region', { name: 'Set numbers' });
    await expect(numbers).toContainText('not fixed yet');
    await numbers.getByRole('button', { name: 'Fix set numbers' }).click();
    await expect(numbers).toContainText('Set numbers are fixed: each set');
    await expect(numbers.getByRole('button', { name: 'Fix set numbers' })).toBeDisabled();
    await expect(window.saving).toContainText('Saved');
    const setsOf = (sheet: readonly PdfPage[]) =>
      sheet.flatMap(firstColumn).filter((word) => /^HS-\d+$/.test(word));
    await print.choose('Hardware sets');
    const before = setsOf(await print.print());

    await page.reload();
    // Nothing is chosen, and no set is needed, before it is known what hangs there.
    await window.addOpening('A00');
    const opening = openingPage(page);
    await opening.open('A00');
    await opening.group('Door');
    await opening.pick('Door type', 'Single swinging leaf');
    await opening.pick('Leaf material', 'Hollow metal');
    await opening.group('Latch');
    await opening.pick('Latch or exit device', 'Mortise latch');
    await print.open();
    const next = `HS-${before.length + 1}`;
    await expect(numbers).toContainText(`new since then: ${next}`);
    await print.choose('Hardware sets');
    const later = await print.print();
    expect(setsOf(later)).toEqual([...before, next]);
    expect(later.map((one) => one.text).join(' ')).toContain('New since the numbers were fixed');

    await numbers.getByRole('button', { name: 'Fix set numbers' }).click();
    await expect(numbers).toContainText('Set numbers are fixed: each set');
    await page.getByRole('button', { name: 'Undo' }).first().click();
    await expect(numbers).toContainText(`new since then: ${next}`);
  },
);

alone('an installer takes along the sheets of the openings that are shown', async ({ context }) => {
  const window = await newWindow(context);
  await window.find('S1-');
  const print = printPage(window.page);
  await print.open();
  await print.choose('Opening sheets');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  for (const one of pages) {
    expect(one.text).toMatch(/S1-/);
    // Each page says whose it is, also the second one of an opening; lines to sign never stand there alone.
    expect(firstColumn(one).some((word) => marks.includes(word))).toBe(true);
    // What the opening is and what it looks like are read together; words of a drawing are painted twice.
    const drawn = one.text.match(/Elevation, egress side/g) ?? [];
    expect(one.text.match(/FIRE LABEL/g) ?? []).toHaveLength(drawn.length / 2);
  }
  // The key to the numbers stands beside its drawing.
  const keys = await window.page.locator('.opening-drawings figure').evaluateAll((figures) =>
    figures.flatMap((figure) => {
      const [drawn, key] = ['svg', 'ol'].map((one) => figure.querySelector(one)?.getBoundingClientRect());
      return drawn && key ? [{ left: key.left - drawn.right, top: key.top - drawn.top }] : [];
    }),
  );
  expect(keys.length).toBeGreaterThan(4);
  expect(keys.filter(({ left, top }) => left < 0 || Math.abs(top) > 1)).toEqual([]);
  const text = pages.map((one) => one.text).join(' ');
  const sheets = await window.page.locator('article.opening-sheet').count();
  expect(sheets).toBeGreaterThan(2);
  expect(text.match(/\bSignature\b/g)).toHaveLength(sheets);
});

test('a commissioner prints what each hardware set does, every set once', async ({ page }) => {
  const print = printPage(page);
  await print.open();
  await print.choose('Sequence of operation');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  const { sets } = sequencePages(demo, decideInBuilding(demo));
  const printed = pages.flatMap(firstColumn).filter((word) => /^HS-\d+$/.test(word));
  expect(printed).toEqual(sets.map((set) => set.id));
  const lines = sets.flatMap((set) => set.ways.flatMap((way) => way.lines));
  const events = pages.flatMap(firstColumn).filter((word) => word === 'Normal, secured');
  expect(events).toHaveLength(lines.filter((line) => line.event === 'Normal, secured').length);
  // A head never stands alone at the foot of a page: its first event is on the same one.
  for (const one of pages) {
    const words = firstColumn(one);
    words.forEach((word, index) => {
      if (/^HS-\d+$/.test(word)) expect(words.slice(index)).toContain('Normal, secured');
    });
  }
});

alone(
  'a technician takes acceptance tests along: one line per condition, boxes and lines to sign',
  async ({ context }) => {
    const window = await newWindow(context);
    await window.find('S1-');
    const print = printPage(window.page);
    await print.open();
    await print.choose('Acceptance test sheets');
    const pages = await print.print();
    expectEveryPageToStandAlone(pages);
    const tests = testSheets(demo, decideInBuilding(demo));
    const found = new Map<string, PdfPage[]>();
    for (const one of pages) {
      const mark = firstColumn(one).find((word) => marks.includes(word)) ?? 'no mark';
      found.set(mark, [...(found.get(mark) ?? []), one]);
      for (const words of ['Tested by', 'Witnessed by', 'Signature']) expect(one.text).toContain(words);
      for (const head of testColumns) expect(one.text.toUpperCase()).toContain(head.toUpperCase());
    }
    expect(found.size).toBeGreaterThan(2);
    for (const [mark, its] of found) {
      const { lines } = tests.find((one) => one.mark === mark) ?? { lines: [] };
      const text = its.map((one) => one.text).join(' ');
      expect(lines.length).toBeGreaterThan(5);
      for (const line of lines) expect(text).toContain(line.expect);
      const sheet = window.page.getByRole('article', { name: `Test of ${mark}`, exact: true });
      await expect(sheet.locator('.test-box')).toHaveCount(2 * lines.length);
    }
  },
);

test('a reviewer prints what was found about the building, rules along the way out among it', async ({
  page,
}) => {
  const print = printPage(page);
  await print.open();
  await print.choose('Building findings', 'Review register');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  const all = pages.map((one) => one.text).join(' ');
  const [register = '', findings = ''] = all.split(/(?=\bBuilding findings\b)/);
  expect(register).toContain('3 lines about the building need a signature as well');
  expect(register).toMatch(/Building.*S2-5, S2-P.*released together from one place/);
  expect(findings + all).toMatch(/Severe \d+ findings?.*Serious \d+ findings?.*Note \d+ findings?/);
  expect(all).toMatch(/Records room.* is reached from Main lobby without a credential, through 106/);
  for (const one of pages.filter((each) => each.text.includes('WHAT WAS FOUND'))) {
    expect(one.text).toContain('OPENINGS');
  }
});

test('an electrician prints the circuits: each wired opening once, whole, under its mark', async ({
  page,
}) => {
  const print = printPage(page);
  await print.open();
  await print.choose('One-line diagrams');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  const decisions = decideInBuilding(demo);
  const wired = Object.values(demo.openings).filter(({ id }) => {
    const candidate = decisions.get(id)?.chosen?.candidate;
    // What stays as it is without power hangs on no lock circuit: a reader that only tells an operator to open.
    return candidate?.device.wired === true && ['safe', 'secure'].includes(candidate.failMode);
  });
  expect(wired.length).toBeGreaterThan(20);
  const marksOn = (one: PdfPage) =>
    one.words.map((word) => word.text.trim()).filter((word) => wired.some(({ mark }) => mark === word));
  expect(pages.flatMap(marksOn).toSorted()).toEqual(wired.map(({ mark }) => mark).toSorted());
  // Lettering has a halo, so every word of a drawing is there twice.
  const drawn = (one: PdfPage, words: RegExp) => (one.text.match(words)?.length ?? 0) / 2;
  for (const one of pages) {
    expect(drawn(one, /Lock circuit/g)).toBe(marksOn(one).length);
    expect(drawn(one, /One-line diagram, not to scale/g)).toBe(marksOn(one).length);
  }
});

test('a reviewer holds the project against another edition and takes the differences along on paper', async ({
  page,
}) => {
  await lookAt(page, 'project');
  const part = page.getByRole('region', { name: 'Another basis, side by side', exact: true });
  await part.getByRole('combobox', { name: 'IBC', exact: true }).selectOption({ label: '2024' });
  await part.getByRole('button', { name: 'Compare' }).click();
  await expect(part.getByRole('status')).toContainText(/\d+ openings of \d+ would come out differently/);
  const said = (await part.getByRole('status').textContent()) ?? '';
  const print = printPage(page);
  await print.open();
  await print.choose('Another basis, side by side');
  const pages = await print.print();
  expectEveryPageToStandAlone(pages);
  const all = pages.map((one) => one.text).join(' ');
  expect(all).toContain(said.trim());
  expect(all).toMatch(/S1-2 .*R-56 · IBC 2024 1010\.2\.6/);
});

test('paper is filled: wiring, diagrams, tests and the register leave no page half empty but their last', async ({
  page,
}) => {
  const print = printPage(page);
  await print.open();
  // A test with more lines than a page holds runs over onto a second one.
  const mayBeLow = new Map([['Acceptance test sheets', 5]]);
  for (const name of ['One-line diagrams', 'Power and cable', 'Acceptance test sheets', 'Review register']) {
    await print.choose(name);
    const fills = (await print.print()).map(fillOf);
    const low = fills.slice(0, -1).filter((fill) => fill < 0.5);
    expect({ name, low: low.length <= (mayBeLow.get(name) ?? 0) ? [] : low }).toEqual({ name, low: [] });
    expect(fills.reduce((sum, one) => sum + one, 0) / fills.length).toBeGreaterThan(0.75);
  }
});

import type { Browser, Page } from 'playwright';
import { middleOf, pageOf, withApp } from './app.ts';
import { type Line, report } from './measure.ts';
import { projectOf } from './openings.ts';

/**
 * How long somebody at the screen waits, in a real browser: a small project beside a large one in the same run. From
 * the input to the end of the frame that shows its result.
 */
const sizes = [100, 5000] as const;
const rounds = 9;
/** What is typed or answered is shown in the next frame; anything more goes behind it. */
const frameMs = 16;

interface Waits {
  readonly name: string;
  readonly ms: readonly number[];
}

async function waits(browser: Browser, address: string, count: number): Promise<readonly Waits[]> {
  const project = { ...projectOf(count), id: `bench-${count}`, name: `Bench ${count}` };
  const page = await pageOf(browser, address, project);
  const found: Waits[] = [];
  const note = async (name: string, once: (round: number) => Promise<number>) => {
    const ms: number[] = [];
    for (let round = 0; round < rounds; round++) ms.push(await once(round));
    found.push({ name, ms });
  };
  await page.goto(`${address}#/opening/o7`);
  await page.getByRole('region', { name: 'Decision' }).waitFor();
  await note('an answer at an opening', (round) => answer(page, round));
  await page.goto(`${address}#/schedule`);
  await page.getByRole('searchbox').waitFor();
  await note('a letter in the search', (round) => search(page, round));
  await note('the schedule from the legend', () => goTo(page, 'legend', 'schedule', '[role="grid"]'));
  await note('an opening from the schedule', () => goTo(page, 'schedule', 'opening/o9', '#decision'));
  await page.close();
  return found;
}

/** Yes and no by turns at the first such question that is shown. */
function answer(page: Page, round: number): Promise<number> {
  return page.evaluate(async (which) => {
    const choices = document.querySelectorAll<HTMLElement>(
      '[data-fact="swingsWithEgress"] [role="radio"], [data-fact="swingsWithEgress"] input',
    );
    const one = choices[which % 2];
    if (!one) throw new Error('No question to answer.');
    const start = performance.now();
    one.click();
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - start;
  }, round);
}

function search(page: Page, round: number): Promise<number> {
  return page.evaluate(async (which) => {
    const box = document.querySelector<HTMLInputElement>('input[type="search"]');
    if (!box) throw new Error('No search on this page.');
    const start = performance.now();
    // Past the field's own setter, which React watches, as typing goes.
    Reflect.set(HTMLInputElement.prototype, 'value', which % 2 === 0 ? '10' : '', box);
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - start;
  }, round);
}

async function goTo(page: Page, from: string, to: string, shown: string): Promise<number> {
  await page.evaluate((hash) => void (location.hash = `#/${hash}`), from);
  await page.waitForTimeout(300);
  return page.evaluate(
    async ([hash, selector]) => {
      const start = performance.now();
      location.hash = `#/${hash}`;
      do await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
      while (!document.querySelector(selector as string));
      return performance.now() - start;
    },
    [to, shown],
  );
}

await withApp(async (browser, address) => {
  const small = await waits(browser, address, sizes[0]);
  const large = await waits(browser, address, sizes[1]);
  const lines = large.map(({ name, ms }, index): Line => {
    const [few, many] = [middleOf(small[index]?.ms ?? []), middleOf(ms)];
    const goal = name.startsWith('an answer') || name.startsWith('a letter');
    return {
      what: name,
      ...(goal && { goal: `a frame, ${frameMs} ms`, met: many <= frameMs }),
      figure: `${few.toFixed(0)} ms with ${sizes[0]} openings, ${many.toFixed(0)} ms with 5,000: ${(many / few).toFixed(1)} times`,
    };
  });
  report('What somebody at the screen waits', lines);
});

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, type Page } from 'playwright/test';
import { lookAt, test } from './pages/reader.ts';

// The checker is put into the page as a script, which the policy of the page forbids to everybody else.
test.use({ withoutPolicy: true });

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/** Every rule, or those of color only: a look changes nothing else. Sheets are the same in every look and at every width. */
async function violations(page: Page, rules: 'all' | 'color', sheets: boolean): Promise<readonly string[]> {
  const found = await page.evaluate(
    async ([which, withSheets]) => {
      const { axe } = globalThis as unknown as {
        axe: { run: (context: object, options: object) => Promise<{ violations: Violation[] }> };
      };
      const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      // 7 to 1 instead of 4.5 to 1: read in sunlight.
      const color = 'color-contrast-enhanced';
      const context = withSheets ? { include: ['html'] } : { include: ['html'], exclude: ['.paper'] };
      const result = await axe.run(
        context,
        which === 'all'
          ? { runOnly: { type: 'tag', values: standards }, rules: { [color]: { enabled: true } } }
          : { runOnly: { type: 'rule', values: [color, 'link-in-text-block'] } },
      );
      return result.violations;
    },
    [rules, sheets] as const,
  );
  return found.flatMap((one) =>
    one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)} — ${node.failureSummary}`),
  );
}

const pages = [
  'schedule',
  'opening/opening-103',
  'walk/opening-103',
  'project',
  'review',
  // With one row of its loads and exits open.
  'building/space-daycare',
  'pricing',
  'power',
  'print',
  'rules',
  'files',
  'legend',
];

test.setTimeout(90_000);

// One test for each page: `npm run stories -- --grep "barrier: walk"` runs one page alone.
for (const address of pages) {
  for (const width of [390, 1440]) {
    test(`nobody meets a barrier: ${address}, ${width} px`, async ({ page }) => {
      // All sheets of a building at once, in three looks: long on a busy machine, as in the print stories.
      if (address === 'print') test.setTimeout(180_000);
      // Without motion a new look stands at once; half-way colors would be measured otherwise.
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.setViewportSize({ width, height: 900 });
      await lookAt(page, address);
      // A sheet out of sight is a box of guessed height: its lines would be judged against the desk behind it.
      await page.addStyleTag({ content: '.paper { content-visibility: visible !important; }' });
      await page.addScriptTag({ content: axeSource });
      // A look changes colors only, and those are the same at every width.
      const looks = width === 1440 ? (['light', 'dark', 'sunlight'] as const) : (['light'] as const);
      for (const look of looks) {
        await page.evaluate((name) => document.documentElement.setAttribute('data-theme', name), look);
        const all = look === 'light';
        expect(await violations(page, all ? 'all' : 'color', all && width === 1440), look).toEqual([]);
      }
    });
  }
}

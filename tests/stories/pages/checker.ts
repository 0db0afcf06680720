import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright/test';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** The page has to be opened without its policy. */
export const putChecker = (page: Page) => page.addScriptTag({ content: axeSource });

/**
 * Takes out what is built like two of its neighbors already: the hundredth row of a table has no barrier that the first
 * two have not. Alike is what has the same elements in the same order, with the same classes, roles and states, each
 * with or without words. The checker walks whatever is in the page, also what is hidden, so it is taken out and put
 * back by `putBack`, which must come before the page changes.
 */
export const takeOutAlike = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const said =
      /^(class|role|type|hidden|disabled|open|scope|aria-(?!label|controls|describedby|owns|row|col).*|data-(?!index|cell|opening).*)$/;
    const shapes = new Map<Element, string>();
    const out: [ChildNode, Comment][] = [];
    const parents = [...document.querySelectorAll('main *')].filter((one) => one.children.length > 2);
    const todo: Element[] = parents.flatMap((one) => [...one.querySelectorAll('*')]).toReversed();
    // From the leaves up, so that the shapes inside are known.
    for (const element of todo) {
      if (shapes.has(element)) continue;
      const attributes = [...element.attributes]
        .map(({ name, value }) => (said.test(name) ? `${name}=${value}` : name))
        .toSorted();
      const hasWords = [...element.childNodes].some((one) => one.nodeType === 3 && one.textContent?.trim());
      const inside = [...element.children]
        .map((one) => shapes.get(one) ?? '')
        .filter((one, at, all) => one !== all[at - 1]);
      shapes.set(
        element,
        `<${element.tagName} ${attributes.join(' ')} ${String(hasWords)} ${inside.join('')}>`,
      );
    }
    for (const parent of parents) {
      const seen = new Map<string, number>();
      for (const child of parent.children) {
        const shape = shapes.get(child) ?? '';
        seen.set(shape, (seen.get(shape) ?? 0) + 1);
        if ((seen.get(shape) ?? 0) > 2) out.push([child, new Comment('alike')]);
      }
    }
    for (const [child, mark] of out) child.replaceWith(mark);
    Object.assign(globalThis, { out: [...(Reflect.get(globalThis, 'out') ?? []), ...out] });
  });

/** Takes out the sheets of paper, which are the same in every look. */
export const takeOutSheets = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const out = [...document.querySelectorAll('.paper')].map((one): [Element, Comment] => [
      one,
      new Comment('sheet'),
    ]);
    for (const [sheet, mark] of out) sheet.replaceWith(mark);
    Object.assign(globalThis, { out: [...(Reflect.get(globalThis, 'out') ?? []), ...out] });
  });

export const putBack = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const out = (Reflect.get(globalThis, 'out') ?? []) as [Element, Comment][];
    for (const [element, mark] of out.toReversed()) mark.replaceWith(element);
    Object.assign(globalThis, { out: [] });
  });

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/** Every rule, or those of color only: a look changes nothing else. */
export async function violations(page: Page, rules: 'all' | 'color'): Promise<readonly string[]> {
  const found = await page.evaluate(async (which) => {
    const { axe } = globalThis as unknown as {
      axe: { run: (context: object, options: object) => Promise<{ violations: Violation[] }> };
    };
    const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    // 7 to 1 instead of 4.5 to 1: read in sunlight.
    const color = 'color-contrast-enhanced';
    // What passes is not described; pages here have no frames and load no media.
    const fast = { resultTypes: ['violations'], iframes: false, preload: false };
    const result = await axe.run(
      { include: ['html'] },
      which === 'all'
        ? { runOnly: { type: 'tag', values: standards }, rules: { [color]: { enabled: true } }, ...fast }
        : { runOnly: { type: 'rule', values: [color, 'link-in-text-block'] }, ...fast },
    );
    return result.violations;
  }, rules);
  return found.flatMap((one) =>
    one.nodes.map((node) => `${one.id}: ${node.html.slice(0, 160)} — ${node.failureSummary}`),
  );
}

/** What a person with a keyboard alone does not come to, or comes to without seeing it. */
export async function outOfKeys(part: Locator): Promise<readonly string[]> {
  const page = part.page();
  const wanted = await part.evaluate((root) => {
    const all = [
      ...root.querySelectorAll<HTMLElement>(
        'a[href], button, input, select, textarea, summary, [tabindex="0"]',
      ),
    ].filter((one) => one.checkVisibility() && !one.matches(':disabled') && one.tabIndex >= 0);
    // Of a group of radio buttons the keyboard comes to one, and the arrows to the others.
    const stops = all.filter(
      (one) => !(one instanceof HTMLInputElement && one.type === 'radio' && !one.checked),
    );
    for (const [place, one] of stops.entries()) one.dataset['stop'] = String(place);
    // A place to begin from, just before the part.
    const start = document.createElement('span');
    start.tabIndex = -1;
    root.before(start);
    start.focus();
    return stops.map((one) =>
      (one.textContent?.trim() || one.getAttribute('aria-label') || one.id).slice(0, 60),
    );
  });
  const seen = new Set<string>();
  const dim: string[] = [];
  for (let press = 0; press < wanted.length + 3 && seen.size < wanted.length; press += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one key after the other
    await page.keyboard.press('Tab');
    // oxlint-disable-next-line no-await-in-loop
    const at = await page.evaluate(() => {
      const one = document.activeElement as HTMLElement | null;
      const rings = [one, one?.closest('.choice, .answer-cell')].map((ringed) =>
        ringed ? getComputedStyle(ringed) : undefined,
      );
      const isRinged = rings.some(
        (style) => style?.outlineStyle === 'solid' && parseFloat(style.outlineWidth) >= 2,
      );
      return { stop: one?.dataset['stop'], isRinged };
    });
    if (at.stop === undefined) continue;
    seen.add(at.stop);
    if (!at.isRinged) dim.push(`no ring: ${wanted[Number(at.stop)]}`);
  }
  await part.evaluate((root) => {
    root.previousElementSibling?.remove();
    for (const one of root.querySelectorAll<HTMLElement>('[data-stop]')) delete one.dataset['stop'];
  });
  return [
    ...wanted.filter((_one, place) => !seen.has(String(place))).map((name) => `not reached: ${name}`),
    ...dim,
  ];
}

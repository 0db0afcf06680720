import type { Page } from 'playwright/test';

/** Opens everything that is folded, so that it is looked at too; a long page is folded in many places. */
export async function openFolds(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (const fold of document.querySelectorAll<HTMLElement>('main details:not([open]) > summary')) {
      if (fold.checkVisibility()) fold.click();
    }
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  });
}

/**
 * `faultsInSight` at every stop of what scrolls by itself, from its head to its foot: a grid draws only the rows in
 * sight, and which those are depends on where it was left.
 */
export async function layoutFaults(page: Page): Promise<readonly string[]> {
  const found = new Set<string>();
  const stops = await page.evaluate(() => {
    const grid = document.querySelector('.grid-scroll');
    return grid ? Math.ceil(grid.scrollHeight / grid.clientHeight) : 1;
  });
  for (let stop = 0; stop < stops; stop++) {
    await page.evaluate(async (at) => {
      const grid = document.querySelector('.grid-scroll');
      grid?.scrollTo(0, at * grid.clientHeight);
      for (let frame = 0; frame < 2; frame++) await new Promise((done) => requestAnimationFrame(done));
    }, stop);
    for (const fault of await faultsInSight(page)) found.add(fault);
  }
  return [...found];
}

/** By how much the page is wider than its window, in pixels; at most 0 where it is not. */
export async function tooWide(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

/** What an eye would object to on the page as it stands, each in one line. */
async function faultsInSight(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const faults: string[] = [];
    const name = (element: Element) =>
      `“${(element.textContent ?? '').trim().slice(0, 40)}” (${element.className})`;
    const main = document.querySelectorAll('header, main');
    /** Not scrolled away inside a part of the page that scrolls by itself. */
    const isInSight = (element: Element, box: DOMRect) => {
      for (let at = element.parentElement; at; at = at.parentElement) {
        if (!['auto', 'scroll'].includes(getComputedStyle(at).overflowY)) continue;
        const frame = at.getBoundingClientRect();
        if (box.bottom > frame.bottom || box.top < frame.top) return false;
      }
      return true;
    };
    const texts: { element: Element; box: DOMRect }[] = [];
    for (const root of main) {
      const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        const node = walker.currentNode;
        const element = node.parentElement;
        if (!element || !node.textContent?.trim() || !element.checkVisibility()) continue;
        // Options are drawn by the browser, drawings have their own tests, hidden words are for listeners.
        if (element.closest('select, svg, .visually-hidden, .skip-link, .masthead-word')) continue;
        const range = document.createRange();
        range.selectNodeContents(node);
        for (const box of range.getClientRects()) if (isInSight(element, box)) texts.push({ element, box });
      }
      for (const element of root.querySelectorAll('*')) {
        const style = getComputedStyle(element);
        const cuts =
          style.overflowX === 'hidden' || style.overflowX === 'clip' || style.textOverflow === 'ellipsis';
        if (
          !cuts ||
          !element.checkVisibility() ||
          element.closest('input, .visually-hidden, svg, .masthead-word')
        )
          continue;
        if (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1)
          faults.push(`cut off: ${name(element)}`);
      }
    }
    /** What floats over the page by design: the bar at the foot, marks that stay while a grid scrolls. */
    const floats = (element: Element) => {
      for (let at: Element | null = element; at; at = at.parentElement) {
        if (['sticky', 'fixed'].includes(getComputedStyle(at).position)) return true;
      }
      return false;
    };
    // From top to bottom, so that each is compared only with what begins before it ends.
    const still = texts.filter(({ element }) => !floats(element)).toSorted((a, b) => a.box.top - b.box.top);
    for (const [index, a] of still.entries()) {
      for (const b of still.slice(index + 1)) {
        if (b.box.top > a.box.bottom) break;
        if (a.element.contains(b.element) || b.element.contains(a.element)) continue;
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        // Boxes of lines reach above and below the letters; only letters that meet count.
        if (wide > 2 && high > 0.45 * Math.min(a.box.height, b.box.height))
          faults.push(`overlap: ${name(a.element)} and ${name(b.element)}`);
      }
    }
    return [...new Set(faults)];
  });
}

/** Everything to touch that is smaller than a thumb, with its size. */
export async function smallTargets(page: Page, least = 48): Promise<readonly string[]> {
  return page.evaluate((px) => {
    const found: string[] = [];
    const targets = document.querySelectorAll('a, button, input, select, textarea, summary, label.choice');
    for (const target of targets) {
      if (!target.checkVisibility() || target.matches('.skip-link')) continue;
      const box = target.getBoundingClientRect();
      if (box.height < px - 0.5 || box.width < px - 0.5) {
        const says = target.getAttribute('aria-label') ?? target.textContent?.trim().slice(0, 40);
        found.push(`${says}: ${Math.round(box.width)} × ${Math.round(box.height)}`);
      }
    }
    return found;
  }, least);
}

/** Goes from stop to stop with Tab and names each that does not show that it has the focus. */
export async function unseenFocus(page: Page, stops: number): Promise<readonly string[]> {
  const unseen: string[] = [];
  for (let stop = 0; stop < stops; stop++) {
    await page.keyboard.press('Tab');
    const fault = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return '';
      const shows = (at: Element | null) => {
        if (!at) return false;
        const style = getComputedStyle(at);
        return style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
      };
      // A hidden radio shows its focus on the cell around it.
      if (shows(element) || shows(element.closest('label'))) return '';
      return element.outerHTML.slice(0, 160);
    });
    if (fault) unseen.push(fault);
  }
  return unseen;
}

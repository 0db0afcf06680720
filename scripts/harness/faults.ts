/**
 * Faults of the storage: a full disk, writes that fail, hang or abort, a database that is missing, never answers or is
 * cleared while the app is open. What was shown must be there once the fault is over, and the header must not have said
 * “Saved” meanwhile. `npx tsx scripts/harness/faults.ts 18`.
 */
import type { BrowserContext, Page } from 'playwright';
import { newWindow } from '../../tests/stories/pages/window.ts';
import { addAll, harness, missing, untilSaved } from './bench.ts';

/** What happens to the page before or while it works; each runs inside the page. */
const atStart: Record<string, () => void> = {
  'no database': () => {
    // No getter: the name that the runner gives to a function inside is not known in the page.
    Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
  },
  'a database that never answers': () => {
    IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
  },
};
const whileOpen: Record<string, () => void | Promise<void>> = {
  'a full disk': () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('The disk is full.', 'QuotaExceededError');
    };
  },
  'a write that fails': () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('Broken.', 'UnknownError');
    };
  },
  'a write that never answers': () => {
    // Transactions are bound when the database is opened; only what is asked of a store can be taken away later.
    IDBObjectStore.prototype.put = () => new EventTarget() as IDBRequest<IDBValidKey>;
  },
  'a database cleared under the app': () =>
    new Promise<void>((resolve) => {
      const request = indexedDB.open('latchward');
      request.addEventListener('success', () => {
        const writing = request.result.transaction('projects', 'readwrite');
        writing.objectStore('projects').clear();
        writing.addEventListener('complete', () => {
          request.result.close();
          resolve();
        });
      });
    }),
};
const names = [...Object.keys(whileOpen), ...Object.keys(atStart)];

const windowOf = (page: Page) =>
  newWindow({ newPage: () => Promise.resolve(page) } as unknown as BrowserContext);

await harness('faults', 18, (bench, index) =>
  bench.withProfile(async (profile) => {
    const name = names[index % names.length] ?? '';
    const first = await bench.start(profile);
    const before = await newWindow(first);
    await addAll(before, ['ZZ-1'], () => undefined);
    await untilSaved(before);
    const lie = whileOpen[name] ? await during(before.page, whileOpen[name], before) : '';
    await first.close();
    const start = atStart[name];
    const said = start ? await started(await bench.start(profile), start) : '';
    const second = await bench.start(profile);
    const { gone } = await missing(second, ['ZZ-1', 'ZZ-2']);
    await second.close();
    const lies = [lie, said].filter((one) => one !== '');
    return { lost: [...gone, ...lies], says: name };
  }),
);

async function during(
  page: Page,
  fault: () => void | Promise<void>,
  window: Awaited<ReturnType<typeof newWindow>>,
) {
  await page.evaluate(fault);
  await addAll(window, ['ZZ-2'], () => undefined);
  return saysTruly(page);
}

/** The app starts into the fault: the saved work has to be on the screen, and another edit is made there. */
async function started(context: BrowserContext, fault: () => void): Promise<string> {
  await context.addInitScript(fault);
  const page = await context.newPage();
  await page.goto('');
  await page.getByRole('button', { name: 'New opening' }).waitFor({ timeout: 60_000 });
  const window = await windowOf(page);
  await addAll(window, ['ZZ-2'], () => undefined);
  const lie = await saysTruly(page);
  await context.close();
  return lie;
}

/** “Not saved” or “Read only”, with a way to save a copy, within the time limit of a write. */
async function saysTruly(page: Page): Promise<string> {
  const said = page.locator('[data-saving="failed"], [data-saving="readOnly"]');
  const isSaid = await said.waitFor({ timeout: 45_000 }).then(
    () => true,
    () => false,
  );
  if (!isSaid) return 'the header did not say it';
  const offers = await said.getByRole('button', { name: 'Save a copy' }).isVisible();
  return offers ? '' : 'no copy was offered';
}

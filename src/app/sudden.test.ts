import fc from 'fast-check';
import { afterEach, expect, test } from 'vitest';
import { runs } from '../../tests/properties/effort.ts';
import { newOpening } from '../domain/model/newProject.ts';
import type { Files } from '../storage/copy/keeper.ts';
import type { Database } from '../storage/database.ts';
import {
  fakeBrowser,
  fakeChannels,
  fakeFiles,
  fakeLocks,
  fakeSecondCopy,
  handTimers,
} from '../storage/testing/fakes.ts';
import { house } from '../storage/testing/projects.ts';
import { countingIds, steppingClock } from './testing/clock.ts';
import type { App } from './session/app.ts';
import { createApp } from './session.ts';

/**
 * Sudden ends by the hundred, in memory: what `scripts/harness` does with real browsers. From the moment of an end
 * nothing of the page reaches the disk any longer, and the file that was being written is torn.
 */
const ends = ['the page', 'the browser', 'the power'] as const;
type End = (typeof ends)[number];

interface Life {
  /** How much the page may still ask of the disk before it ends. */
  readonly after: number;
  readonly end: End;
  /** The share of the last write that reached the disk. */
  readonly torn: number;
  /** The last thing asked of the database was done, and the page never heard of it. */
  readonly unheard: boolean;
  /** Counted from the first moment of the start, or from its end. */
  readonly whileStarting: boolean;
  /** What the surveyor does: so many steps, each followed by a pause that is long enough to save or not. */
  readonly steps: readonly { readonly does: 'an edit' | 'a new slot'; readonly waits: boolean }[];
}

const life: fc.Arbitrary<Life> = fc.record({
  after: fc.integer({ min: 0, max: 24 }),
  end: fc.constantFrom(...ends),
  torn: fc.double({ min: 0, max: 1, noNaN: true }),
  unheard: fc.boolean(),
  whileStarting: fc.boolean(),
  steps: fc.array(
    fc.record({ does: fc.constantFrom('an edit', 'an edit', 'a new slot'), waits: fc.boolean() }),
    { minLength: 1, maxLength: 6 },
  ),
});

const never = new Promise<never>(() => undefined);

function aTablet() {
  const disk = fakeFiles();
  let browser = fakeBrowser();
  let starts = 0;

  /** One page, from its start to its sudden end. */
  const begin = async (ofLife: Life | undefined) => {
    starts += 1;
    let left = ofLife?.whileStarting ? ofLife.after : Number.POSITIVE_INFINITY;
    let tellOver: () => void = () => undefined;
    const over = new Promise<void>((resolve) => {
      tellOver = resolve;
    });
    const isOver = () => left < 0;
    /** Does it, or ends within it, or never begins. */
    const asks = <T>(work: () => Promise<T>, within: () => Promise<unknown>): Promise<T> => {
      if (isOver()) return never;
      left -= 1;
      if (!isOver()) return work();
      return within().then(() => {
        tellOver();
        return never;
      });
    };
    const nothing = () => Promise.resolve();
    const part = (bytes: Uint8Array) => bytes.subarray(0, Math.floor(bytes.length * (ofLife?.torn ?? 1)));
    const { files } = disk;
    const endingFiles: Files = {
      names: () => asks(files.names, nothing),
      read: (name) => asks(() => files.read(name), nothing),
      write: (name, bytes) =>
        asks(
          () => files.write(name, bytes),
          () => files.write(name, part(bytes)),
        ),
      append: (name, bytes) =>
        asks(
          () => files.append(name, bytes),
          () => files.append(name, part(bytes)),
        ),
      release: files.release,
      remove: (name) => asks(() => files.remove(name), nothing),
    };
    const database = browser.window();
    const endingDatabase: Database = {
      ...database,
      run: (mode, work) =>
        asks(
          () => database.run(mode, work),
          () => (ofLife?.unheard ? database.run(mode, work) : nothing()),
        ),
    };
    const timers = handTimers();
    const app = createApp({
      database: endingDatabase,
      copies: fakeSecondCopy(endingFiles),
      clock: steppingClock(`2026-01-05T08:${String(starts % 60).padStart(2, '0')}:00.000Z`),
      ids: countingIds(`s${starts}`),
      locks: fakeLocks(),
      channel: fakeChannels(),
      timers: timers.timers,
      firstProject: () => Promise.resolve(house()),
    });
    await Promise.race([app.start(), over]);
    if (ofLife && !ofLife.whileStarting) left = ofLife.after;
    return { app, timers, isOver };
  };

  return {
    begin,
    loseDatabase: () => {
      browser = fakeBrowser();
    },
  };
}

const marksOf = (app: App) =>
  new Set(Object.values(app.store.getState().document.project.openings).map((opening) => opening.mark));
const add = (app: App, mark: string) =>
  app.store
    .getState()
    .dispatch('New opening', [{ kind: 'putOpening', id: mark, value: newOpening(mark, mark) }]);
const localNow = () => Object.fromEntries(Object.entries(localStorage)) as Record<string, string>;
function putLocal(kept: Readonly<Record<string, string>>) {
  localStorage.clear();
  for (const [key, text] of Object.entries(kept)) localStorage.setItem(key, text);
}
/** A turn of the event loop, in which everything that is ready is done. */
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

/** Lives one life after the other on one tablet; gives the marks that were promised and are not there. */
async function lostIn(lives: readonly Life[]): Promise<readonly string[]> {
  localStorage.clear();
  const tablet = aTablet();
  const promised: string[] = [];
  let count = 0;
  for (const one of lives) {
    // oxlint-disable-next-line no-await-in-loop -- one life after the other
    const { app, timers, isOver } = await tablet.begin(one);
    const gone = isOver() ? [] : promised.filter((mark) => !marksOf(app).has(mark));
    if (gone.length > 0) return gone;
    let local = localNow();
    const shown: string[] = [];
    let saved = 0;
    for (const { does, waits } of one.steps) {
      if (isOver()) break;
      if (does === 'a new slot') app.forgetSetAside();
      else {
        count += 1;
        if (!add(app, `ZZ-${count}`).ok) break;
        shown.push(`ZZ-${count}`);
      }
      // oxlint-disable-next-line no-await-in-loop
      await (waits ? timers.pass(2_500) : timers.pass(10));
      // oxlint-disable-next-line no-await-in-loop
      if (waits) for (let at = 0; at < 12 && !isOver(); at += 1) await turn();
      if (isOver()) break;
      if (app.store.getState().saving.kind !== 'saved') continue;
      saved = shown.length;
      local = localNow();
    }
    // A page that dies leaves localStorage whole, and with it every edit. A browser that dies writes it late.
    promised.push(...(one.end === 'the page' ? shown : shown.slice(0, saved)));
    putLocal(one.end === 'the page' ? localNow() : local);
    if (one.end === 'the power') tablet.loseDatabase();
  }
  const { app } = await tablet.begin(undefined);
  return promised.filter((mark) => !marksOf(app).has(mark));
}

afterEach(() => {
  localStorage.clear();
});

test('P2: whatever is written at that moment, nothing accepted is lost, and nothing saved', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(life, { minLength: 1, maxLength: 4 }), async (lives) => {
      expect(await lostIn(lives)).toEqual([]);
    }),
    { numRuns: runs(25, 400) },
  );
});

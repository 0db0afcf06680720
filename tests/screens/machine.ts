import { afterEach, beforeEach, vi } from 'vitest';
import type { Project } from '../../src/domain/model/project.ts';
import { IDBObjectStore } from 'fake-indexeddb';
import {
  fakeBrowser,
  fakeChannels,
  fakeFiles,
  fakeLocks,
  fakeSecondCopy,
  rawClear,
  rawRows,
} from '../../src/storage/testing/fakes.ts';
import { house } from '../../src/storage/testing/projects.ts';
import { countingIds, steppingClock } from '../../src/app/testing/clock.ts';
import { createPreferences } from '../../src/app/preferences.ts';
import type { App } from '../../src/app/session/app.ts';
import { type AppNeeds, createApp } from '../../src/app/session.ts';

/** One machine with one browser: its database, its private files and its windows. */
export function aMachine() {
  localStorage.clear();
  const locks = fakeLocks();
  const channels = fakeChannels();
  const disk = fakeFiles();
  const apps: App[] = [];
  let browser = fakeBrowser();
  const machine = {
    locks,
    channels,
    disk,
    browser: () => browser,
    /** What a torn database comes to: all of it is gone, and what lies outside it stays. */
    loseDatabase: () => {
      browser = fakeBrowser();
    },
    /** The stored projects are deleted while windows are open. */
    forgetProjects: () => rawClear(browser.indexedDB, 'projects'),
    secondCopy: () => fakeSecondCopy(disk.files),
    window: (over: Partial<AppNeeds> = {}): App => {
      const app = createApp({
        database: browser.window(),
        clock: steppingClock(`2026-01-05T0${apps.length + 1}:00:00.000Z`),
        ids: countingIds(`w${apps.length + 1}`),
        locks,
        channel: channels,
        copies: fakeSecondCopy(disk.files),
        preferences: createPreferences(),
        firstProject: () => Promise.resolve(house('demo')),
        ...over,
      });
      apps.push(app);
      return app;
    },
    open: async (over: Partial<AppNeeds> = {}): Promise<App> => {
      const app = machine.window(over);
      await app.start();
      return app;
    },
    storedProjects: () =>
      rawRows(browser.indexedDB, 'projects') as Promise<{ id: string; document: Project }[]>,
    closeAll: () => Promise.all(apps.map((app) => app.close())),
  };
  return machine;
}

/** For a whole file of tests: a fresh machine before each, with nothing mocked and all windows shut after it. */
export function machineOfEach(): ReturnType<typeof aMachine> {
  let now = aMachine();
  beforeEach(() => {
    now = aMachine();
  });
  afterEach(async () => {
    vi.restoreAllMocks();
    await now.closeAll();
  });
  return new Proxy(now, { get: (_first, key) => Reflect.get(now, key) as unknown });
}

export const saving = (app: App) => app.store.getState().saving;
export const project = (app: App): Project => app.store.getState().document.project;
export const notes = (app: App, value: string) =>
  app.store.getState().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value }]);
export const notices = (app: App) =>
  app.store
    .getState()
    .session.notices.map((notice) => notice.says)
    .join('\n');
export const fileFrom = (text: string) => new Blob([text]);
/** From now on the disk is full; `vi.restoreAllMocks` makes room again. */
export const noRoom = () =>
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
    throw new DOMException('no room', 'QuotaExceededError');
  });

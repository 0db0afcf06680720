import { describe, expect, test } from 'vitest';
import { fakeFiles } from '../testing/fakes.ts';
import { at, noteCommand } from '../testing/projects.ts';
import { createJournal } from './journal.ts';
import { createKeeper } from './keeper.ts';
import type { Line } from './lines.ts';
import { newestOf } from './newest.ts';
import type { WholeCopy } from './slots.ts';

const whole = (revision: number, notes: string): WholeCopy => ({
  ...at(revision),
  id: 'p',
  name: 'House',
  at: '2026-01-05T09:00:00.000Z',
  formatVersion: 1,
  document: { notes },
  setAside: [],
});
const line = (revision: number): Line => ({
  revision,
  after: `t${revision - 1}`,
  command: noteCommand(`t${revision}`, `note ${revision}`),
  takingBack: false,
});

describe('two slots written in turn', () => {
  test('a slot cut anywhere leaves the other one and the lines that lead on to the last edit', async () => {
    const { files, kept } = fakeFiles();
    const keeper = createKeeper(files);
    await keeper.put(whole(1, 'one'));
    await keeper.append('p', [line(2), line(3)]);
    await keeper.put(whole(3, 'three'));
    await keeper.append('p', [line(4)]);
    const later = [...kept.keys()].find((name) => name.endsWith('.b')) ?? '';
    const bytes = kept.get(later) ?? new Uint8Array();
    expect(bytes.length).toBeGreaterThan(100);
    for (let length = 0; length < bytes.length; length += 1) {
      kept.set(later, bytes.slice(0, length));
      // oxlint-disable-next-line no-await-in-loop -- one cut after the other
      const { copy, lines } = await createKeeper(files).look('p');
      expect(copy?.document).toEqual({ notes: 'one' });
      expect(newestOf(undefined, copy ?? undefined, lines)?.at).toEqual(at(4));
    }
  });

  test('a log cut anywhere gives whole lines only, and what is written behind the tear is read', async () => {
    const { files, kept } = fakeFiles();
    const keeper = createKeeper(files);
    await keeper.put(whole(1, 'one'));
    await keeper.append('p', [line(2)]);
    const log = [...kept.keys()].find((name) => name.endsWith('.log')) ?? '';
    const bytes = kept.get(log) ?? new Uint8Array();
    expect(bytes.length).toBeGreaterThan(100);
    for (let length = 0; length < bytes.length; length += 1) {
      kept.set(log, bytes.slice(0, length));
      // oxlint-disable-next-line no-await-in-loop -- one cut after the other
      await createKeeper(files).append('p', [{ ...line(2), command: noteCommand('other', 'x') }]);
      // oxlint-disable-next-line no-await-in-loop
      const { lines } = await createKeeper(files).look('p');
      expect(lines.map((one) => one.command.id)).toEqual(['other']);
    }
  });
});

describe('what is newest', () => {
  const lines = [line(3), line(4)];
  test.each([
    ['nothing anywhere', undefined, undefined, [], 'nowhere'],
    ['only the copy', undefined, at(2), lines, { base: 'copy', at: at(4), differs: 'missing' }],
    [
      'the database missed the last edits',
      at(2),
      at(1),
      [line(2), ...lines],
      { base: 'database', at: at(4), differs: 'unsaved' },
    ],
    ['both agree', at(4), at(2), lines, { base: 'database', at: at(4), differs: 'no' }],
    ['the database fell back', at(1), at(2), lines, { base: 'copy', at: at(4), differs: 'behind' }],
    ['the copy missed edits', at(9), at(2), lines, { base: 'database', at: at(9), differs: 'copyBehind' }],
    ['two histories', { revision: 4, tip: 'x' }, at(2), lines, { base: 'database', differs: 'apart' }],
  ])('%s', (_what, stored, copy, log, expected) => {
    const newest = newestOf(stored, copy, log);
    expect([newest ?? 'nowhere']).toMatchObject([expected]);
  });
});

test('the journal gives back what it kept, and says when it cannot keep', () => {
  localStorage.clear();
  const journal = createJournal();
  expect(journal.keep('p', line(2))).toBe(true);
  expect(journal.lines('p')).toEqual([line(2)]);
  journal.drop('p', 2);
  expect(journal.lines('p')).toEqual([]);
  const full = {
    length: 0,
    key: () => null,
    getItem: () => null,
    removeItem: () => undefined,
    setItem: () => {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  expect(createJournal(full).keep('p', line(2))).toBe(false);
});

import { describe, expect, test } from 'vitest';
import { createAutosave, type SavingState, type Written } from './autosave.ts';
import { handTimers } from './testing/fakes.ts';

const full: Written = { ok: false, problem: { kind: 'full' } };

/** An autosave over a database that answers only when the test says so. */
function bench() {
  const clock = handTimers();
  const shown: SavingState[] = [];
  const writes: { document: string; entries: readonly string[]; end: (written: Written) => Promise<void> }[] =
    [];
  const autosave = createAutosave<string, string>({
    timers: clock.timers,
    onState: (state) => shown.push(state),
    write: (document, entries) =>
      new Promise((resolve) => {
        writes.push({
          document,
          entries,
          end: async (written) => {
            resolve(written);
            await clock.settle();
          },
        });
      }),
  });
  const last = () => {
    const write = writes.at(-1);
    if (!write) throw new Error('Nothing was written yet.');
    return write;
  };
  return { ...clock, autosave, shown, writes, last, now: () => autosave.state().kind };
}

describe('autosave', () => {
  test('typing is saved when it pauses, once, with all log entries', async () => {
    const { autosave, pass, writes, last, now } = bench();
    autosave.begin();
    autosave.changed('a', '1');
    await pass(300);
    autosave.changed('ab', '2');
    await pass(300);
    expect(writes).toHaveLength(0);
    expect(now()).toBe('waiting');
    await pass(200);
    expect(writes).toHaveLength(1);
    expect(last()).toMatchObject({ document: 'ab', entries: ['1', '2'] });
  });

  test('typing without a pause is saved every two seconds all the same', async () => {
    const { autosave, pass, writes, last } = bench();
    autosave.begin();
    for (let key = 0; key < 10; key += 1) {
      autosave.changed(`text ${key}`);
      // oxlint-disable-next-line no-await-in-loop -- the clock goes on step by step
      await pass(210);
    }
    expect(writes.map((write) => write.document)).toEqual(['text 9']);
    autosave.changed('text 10');
    await last().end({ ok: true });
    await pass(400);
    expect(last().document).toBe('text 10');
  });

  test('an entry that joins the last one takes its place, unless that is being written', async () => {
    const { autosave, pass, last } = bench();
    autosave.begin();
    autosave.changed('', 'other');
    autosave.changed('s', 's');
    autosave.changed('st', 'st', true);
    await pass(400);
    expect(last().entries).toEqual(['other', 'st']);
    autosave.changed('sti', 'sti', true);
    autosave.changed('stic', 'stic', true);
    await last().end({ ok: true });
    await pass(400);
    expect(last().entries).toEqual(['stic']);
  });

  test('two flushes at once write once', async () => {
    const { autosave, settle, writes, last } = bench();
    autosave.begin();
    autosave.changed('a');
    const both = [autosave.flush(), autosave.flush()];
    await settle();
    expect(writes).toHaveLength(1);
    await last().end({ ok: true });
    await Promise.all(both);
    expect(writes).toHaveLength(1);
  });

  test('"saved" is said only after the write has ended', async () => {
    const { autosave, pass, last, now, shown } = bench();
    autosave.begin();
    autosave.changed('a');
    await pass(400);
    expect(now()).toBe('saving');
    await pass(60_000);
    expect(now()).toBe('saving');
    await last().end({ ok: true });
    expect(now()).toBe('saved');
    expect(shown.map((state) => state.kind)).toEqual(['saved', 'waiting', 'saving', 'saved']);
  });

  test('nothing is written before the first load has ended', async () => {
    const { autosave, pass, writes } = bench();
    autosave.changed('empty', '1');
    await pass(60_000);
    await autosave.flush();
    expect(writes).toHaveLength(0);
    autosave.begin();
    await pass(400);
    expect(writes.map((write) => write.document)).toEqual(['empty']);
  });

  test('edits made during a save are saved after it, and never at the same time', async () => {
    const { autosave, pass, writes, last, now } = bench();
    autosave.begin();
    autosave.changed('a', '1');
    await pass(400);
    autosave.changed('ab', '2');
    await pass(60_000);
    expect(writes).toHaveLength(1);
    await last().end({ ok: true });
    expect(now()).toBe('waiting');
    await pass(400);
    expect(writes).toHaveLength(2);
    expect(last()).toMatchObject({ document: 'ab', entries: ['2'] });
    await last().end({ ok: true });
    expect(now()).toBe('saved');
  });

  test('a failed save is shown at once, stays in sight, and is tried again with the whole document', async () => {
    const { autosave, pass, writes, last, now, shown } = bench();
    autosave.begin();
    autosave.changed('a', '1');
    await pass(400);
    await last().end(full);
    expect(autosave.state()).toMatchObject({ kind: 'failed', tries: 1 });
    expect(autosave.state()).toHaveProperty('says', expect.stringMatching(/full.*save a copy/i));
    autosave.changed('ab', '2');
    expect(now()).toBe('failed');
    await pass(1_000);
    expect(last()).toMatchObject({ document: 'ab', entries: ['1', '2'] });
    expect(now()).toBe('failed');
    await last().end(full);
    await pass(1_999);
    expect(writes).toHaveLength(2);
    await pass(1);
    expect(writes).toHaveLength(3);
    await last().end({ ok: true });
    expect(now()).toBe('saved');
    expect(shown.filter((state) => state.kind === 'saving')).toHaveLength(1);
  });

  test('it never gives up: the last wait is repeated', async () => {
    const { autosave, pass, writes, last } = bench();
    autosave.begin();
    autosave.changed('a');
    await pass(400);
    for (let tries = 0; tries < 12; tries += 1) {
      // oxlint-disable-next-line no-await-in-loop -- the clock goes on step by step
      await last().end(full);
      // oxlint-disable-next-line no-await-in-loop -- the clock goes on step by step
      await pass(30_000);
    }
    expect(writes).toHaveLength(13);
  });

  test('a write that throws is a failed write', async () => {
    const clock = handTimers();
    const autosave = createAutosave<string, string>({
      timers: clock.timers,
      onState: () => undefined,
      write: () => Promise.reject(new Error('the disk is gone')),
    });
    autosave.begin();
    autosave.changed('a');
    await clock.pass(400);
    expect(autosave.state()).toMatchObject({
      kind: 'failed',
      says: expect.stringContaining('the disk is gone'),
    });
  });

  test('flush writes at once and waits for the write in flight and for what was edited since', async () => {
    const { autosave, pass, writes, last, settle, now } = bench();
    autosave.begin();
    autosave.changed('a');
    await pass(400);
    autosave.changed('ab');
    let flushed = false;
    const flush = autosave.flush().then(() => {
      flushed = true;
    });
    await settle();
    expect(writes).toHaveLength(1);
    await last().end({ ok: true });
    expect(writes).toHaveLength(2);
    expect(flushed).toBe(false);
    await last().end({ ok: true });
    await flush;
    expect(last().document).toBe('ab');
    expect(now()).toBe('saved');
  });

  test('flush ends when saving fails, and leaves the retry in place', async () => {
    const { autosave, pass, settle, writes, last } = bench();
    autosave.begin();
    autosave.changed('a');
    const flush = autosave.flush();
    await settle();
    await last().end(full);
    await flush;
    expect(autosave.unsaved()).toBe(true);
    await pass(1_000);
    expect(writes).toHaveLength(2);
  });

  test.each<Written>([
    { ok: false, problem: { kind: 'changedElsewhere' } },
    { ok: false, problem: { kind: 'databaseReplaced' } },
    { ok: false, problem: { kind: 'databaseTooNew' } },
    { ok: false, problem: { kind: 'recordTooNew', name: 'House', found: 2, newest: 1 } },
  ])('what trying again would harm makes it read-only, with the work kept: %o', async (written) => {
    const { autosave, pass, writes, last, now } = bench();
    autosave.begin();
    autosave.changed('a');
    await pass(400);
    await last().end(written);
    expect(now()).toBe('readOnly');
    await pass(600_000);
    await autosave.flush();
    expect(writes).toHaveLength(1);
    expect(autosave.unsaved()).toBe(true);
  });

  test('stopped during a write: the reason stays on screen', async () => {
    const { autosave, pass, last } = bench();
    autosave.begin();
    autosave.changed('a');
    await pass(400);
    autosave.stop('Another window writes.');
    await last().end({ ok: true });
    expect(autosave.state()).toEqual({ kind: 'readOnly', says: 'Another window writes.' });
    expect(autosave.unsaved()).toBe(false);
  });

  test('edits of the next document are saved although a write of the one before it ended late', async () => {
    const { autosave, pass, writes, last, now } = bench();
    autosave.begin();
    autosave.changed('old', '1');
    await pass(400);
    autosave.replaced();
    autosave.begin();
    autosave.changed('new', '2');
    await last().end(full);
    expect(now()).not.toBe('failed');
    await pass(400);
    expect(writes).toHaveLength(2);
    expect(last()).toMatchObject({ document: 'new', entries: ['2'] });
  });
});

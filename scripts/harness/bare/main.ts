/**
 * The session of the app without its screens: what accepts edits, keeps the log of lines, writes the database and the
 * second copy. It starts in a fraction of the time, so that a thousand kills take less than an hour.
 */
import { createApp } from '../../../src/app/session.ts';
import { newOpening } from '../../../src/domain/model/newProject.ts';

const app = createApp();
const shown = () => app.store.getState().document.project;
const heard = (event: string) => Reflect.get(globalThis, 'heard')(event) as void;

let last = app.store.getState().saving.kind;
app.store.subscribe(({ saving: { kind } }) => {
  if (kind !== last) heard(kind);
  last = kind;
});

/** Every edit has the next number: by it a later start tells the newest one that was accepted. */
function edit(serial: number): boolean {
  const mark = `ZZ-${serial}`;
  const id = app.newId();
  const done = app.store.getState().dispatch('Harness', [
    { kind: 'putOpening', id, value: { ...newOpening(id, mark), facts: {} } },
    { kind: 'setProject', field: 'notes', value: mark },
  ]);
  return done.ok;
}

/** Ends when a frame that shows what was done has been drawn: the second callback runs after it. */
const painted = () =>
  new Promise<void>((resolve) => {
    requestAnimationFrame(() => {
      requestAnimationFrame(() => {
        resolve();
      });
    });
  });

async function edits(from: number, count: number, gapMs: number): Promise<void> {
  for (let serial = from; serial < from + count; serial += 1) {
    if (!edit(serial)) throw new Error(`Edit ${serial} was refused.`);
    heard(`taken ${serial}`);
    // oxlint-disable-next-line no-await-in-loop
    await painted();
    heard(`shown ${serial}`);
    // oxlint-disable-next-line no-await-in-loop -- as somebody types
    await new Promise((resolve) => {
      setTimeout(resolve, Math.random() * gapMs);
    });
  }
}

Object.assign(globalThis, {
  bare: {
    start: async (small: boolean) => {
      await app.start();
      if (!small || shown().name === 'Harness') return;
      const made = await app.createProject('Harness');
      if (!made.ok) throw new Error(made.says);
    },
    edits,
    found: () => ({
      name: shown().name,
      notes: shown().notes,
      marks: Object.values(shown().openings).map(({ mark }) => mark),
      said: app.store.getState().session.notices.map(({ says }) => says),
    }),
    flush: app.flush,
    saving: () => app.store.getState().saving.kind,
  },
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Command } from '../domain/commands/command.ts';
import { known } from '../domain/testing/facts.ts';
import { newOpening, newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import { anUndoable, aProject } from '../domain/testing/arbitraries.ts';
import { verdictOn } from '../domain/testing/verdicts.ts';
import { countingIds, steppingClock } from './testing/clock.ts';
import { allAlone } from './decisionsAlone.ts';
import { type AppState, createAppStore, historyLimit } from './store.ts';

function house(): Project {
  return {
    ...newProject('p', 'House'),
    openings: { a: newOpening('a', '101'), b: newOpening('b', '102') },
  };
}

function bench(project = house(), by = 'R. Vega') {
  const log: Command[] = [];
  const store = createAppStore({
    project,
    clock: steppingClock(),
    ids: countingIds('c'),
    by: () => by,
    onCommand: (command) => log.push(command),
  });
  return { store, log, app: (): AppState => store.getState(), now: () => store.getState().document.project };
}

/** Every answer with its reasons, by the names of rules and candidates. */
function inNames(project: Project) {
  const rules = (steps: readonly { readonly rule: { readonly id: string } }[]) =>
    steps.map((step) => step.rule.id);
  return [...allAlone(project)].map(([id, answer]) => ({
    id,
    state: answer.state,
    chosen: answer.chosen?.candidate.id,
    score: answer.chosen?.score,
    runnerUp: answer.runnerUp?.candidate.id,
    overridden: answer.overridden?.id,
    rejected: answer.rejected.map((one) => [one.candidate.id, ...rules(one.because)]),
    open: answer.open.map((one) => [one.candidate.id, ...rules(one.because)]),
    requires: rules(answer.requires),
    signOffs: rules(answer.signOffs),
    cautions: rules(answer.cautions),
    slots: answer.slots,
  }));
}

describe('P11: undo and redo', () => {
  /** P11. Each step is an edit, an undo or a redo; a plain list of documents says what must be on screen. */
  const aMove = fc.oneof(
    { weight: 3, arbitrary: fc.array(anUndoable, { minLength: 1, maxLength: 3 }) },
    { weight: 2, arbitrary: fc.constantFrom('undo' as const, 'redo' as const) },
  );
  test('for any walk of edits, undos and redos the document is the one that was there', () => {
    fc.assert(
      fc.property(aProject, fc.array(aMove, { maxLength: 25 }), (project, moves) => {
        const { app, now } = bench(project);
        // Who wrote what goes on being counted: taking back is an edit too.
        const document = () => {
          const { history: _history, ...rest } = structuredClone(now());
          return rest;
        };
        let documents = [document()];
        let at = 0;
        for (const move of moves) {
          if (move === 'undo') {
            app().undo();
            at = Math.max(0, at - 1);
          } else if (move === 'redo') {
            app().redo();
            at = Math.min(documents.length - 1, at + 1);
          } else {
            const done = app().dispatch('Edit', move);
            if (done.ok && done.changed) {
              documents = [...documents.slice(0, at + 1), document()];
              at += 1;
            }
          }
          expect(document()).toEqual(documents[at]);
        }
      }),
      { numRuns: 300 },
    );
  });

  test('a verdict stays on file: undo takes back the step before it, and redo brings that again', () => {
    const { app, now } = bench(newProject('p', 'House'));
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'Seen.' }]);
    const verdict = verdictOn(now(), []);
    app().dispatch('Approved', [{ kind: 'appendVerdict', id: verdict.id, value: verdict }]);
    expect(app().undo()).toMatchObject({ ok: true, changed: true });
    expect(now().notes).toBe('');
    expect(Object.keys(now().verdicts)).toEqual([verdict.id]);
    expect(app().undo()).toMatchObject({ ok: true, changed: false });
    app().redo();
    expect(now().notes).toBe('Seen.');
    expect(Object.keys(now().verdicts)).toEqual([verdict.id]);
  });

  test('undo gives back the same recommendations', () => {
    fc.assert(
      fc.property(aProject, fc.array(anUndoable, { minLength: 1, maxLength: 3 }), (project, edits) => {
        const { app, now } = bench(project);
        const before = structuredClone(inNames(now()));
        const done = app().dispatch('Edit', edits);
        fc.pre(done.ok && done.changed);
        inNames(now());
        app().undo();
        expect(structuredClone(inNames(now()))).toEqual(before);
      }),
      { numRuns: 20 },
    );
  });

  test('a new edit after an undo ends what could be redone', () => {
    const { app, now } = bench();
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'one' }]);
    app().undo();
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'two' }]);
    expect(app().redo()).toEqual({ ok: true, changed: false });
    expect(now().notes).toBe('two');
  });

  test('no more than five hundred steps are kept', () => {
    const { app, now } = bench();
    for (let count = 0; count < historyLimit + 20; count += 1) {
      app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: `note ${count}` }]);
    }
    expect(app().document.past).toHaveLength(historyLimit);
    for (let count = 0; count < historyLimit + 20; count += 1) app().undo();
    expect(now().notes).toBe('note 19');
  });
});

describe('typing', () => {
  const type = (app: AppState, value: string) =>
    app.dispatch('Notes of 101', [{ kind: 'setOpening', id: 'a', field: 'notes', value }], 'notes of a');

  test('is kept with every key, and is one step to undo and to redo', () => {
    const { app, now } = bench();
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'before' }]);
    for (const text of ['s', 'st', 'sti', 'stic', 'stick']) {
      type(app(), text);
      expect(now().openings['a']?.notes).toBe(text);
    }
    app().undo();
    expect(now().openings['a']?.notes).toBe('');
    expect(now().notes).toBe('before');
    app().redo();
    expect(now().openings['a']?.notes).toBe('stick');
  });

  test('after anything else is a step of its own', () => {
    const { app, now } = bench();
    type(app(), 'one');
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'between' }]);
    type(app(), 'one two');
    app().undo();
    expect(now().openings['a']?.notes).toBe('one');
    app().redo();
    app().undo();
    type(app(), 'one three');
    app().undo();
    expect(now().openings['a']?.notes).toBe('one');
  });
});

describe('dispatch', () => {
  test('writes who and when into the log and into the fact', () => {
    const { app, log, now } = bench();
    app().dispatch('Latch of 101', [{ kind: 'setFact', id: 'a', fact: 'latch', value: known('mortise') }]);
    const at = '2026-01-05T08:00:00.000Z';
    expect(now().openings['a']?.facts.latch).toEqual({ is: 'known', value: 'mortise', at, by: 'R. Vega' });
    expect(log).toMatchObject([{ id: 'c-1', at, by: 'R. Vega', label: 'Latch of 101' }]);
  });

  test('without a name no author is made up', () => {
    const { app, now } = bench(house(), '');
    app().dispatch('Latch', [{ kind: 'setFact', id: 'a', fact: 'latch', value: known('mortise') }]);
    expect(now().openings['a']?.facts.latch).not.toHaveProperty('by');
  });

  test('undo and redo stand in the log as well, so the log tells the whole story', () => {
    const { app, log } = bench();
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'one' }]);
    app().undo();
    app().redo();
    expect(log.map((command) => command.label)).toEqual(['Notes', 'Undo: Notes', 'Redo: Notes']);
    expect(log[1]?.edits).toEqual([{ kind: 'setProject', field: 'notes', value: '' }]);
  });

  test('a refused edit gives its sentence and leaves no trace', () => {
    const { app, log, now } = bench();
    const before = now();
    expect(
      app().dispatch('Width', [{ kind: 'setFact', id: 'a', fact: 'leafWidthIn', value: known(3) }]),
    ).toEqual({
      ok: false,
      says: 'Leaf width cannot be below 12 in.',
      problem: { kind: 'badValue', field: 'leafWidthIn', says: 'Leaf width cannot be below 12 in.' },
    });
    expect(now()).toBe(before);
    expect(log).toEqual([]);
    expect(app().document.past).toEqual([]);
  });

  test('leaving a field as it was is no step', () => {
    const { app, log } = bench();
    app().dispatch('Latch', [{ kind: 'setFact', id: 'a', fact: 'latch', value: known('mortise') }]);
    const again = app().dispatch('Latch', [
      { kind: 'setFact', id: 'a', fact: 'latch', value: known('mortise') },
    ]);
    const mark = app().dispatch('Mark', [{ kind: 'setOpening', id: 'b', field: 'mark', value: '102' }]);
    expect([again, mark]).toEqual([
      { ok: true, changed: false },
      { ok: true, changed: false },
    ]);
    expect(log).toHaveLength(1);
  });

  test('from assumed to known is a step, although the value is the same', () => {
    const { app } = bench();
    app().dispatch('Latch', [
      { kind: 'setFact', id: 'a', fact: 'latch', value: { is: 'assumed', value: 'mortise', from: 'usual' } },
    ]);
    expect(
      app().dispatch('Latch', [{ kind: 'setFact', id: 'a', fact: 'latch', value: known('mortise') }]),
    ).toEqual({ ok: true, changed: true });
  });

  test('an edit that another edit of the same step takes back is kept', () => {
    const { app, now } = bench();
    app().dispatch('There and back', [
      { kind: 'setProject', field: 'notes', value: 'x' },
      { kind: 'setProject', field: 'notes', value: '' },
    ]);
    expect(now().notes).toBe('');
  });

  test('is refused while the project opens and while it is read-only, undo and redo as well', () => {
    const { app, now } = bench();
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'one' }]);
    const edit = () => app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'two' }]);
    app().setSaving({ kind: 'readOnly', says: 'Open elsewhere.' });
    expect([edit(), app().undo()].map((done) => !done.ok && done.says)).toEqual([
      'Open elsewhere.',
      'Open elsewhere.',
    ]);
    app().setSaving({ kind: 'saved' });
    app().setReady(false);
    expect(edit()).toMatchObject({ ok: false, says: expect.stringContaining('still being opened') });
    expect(now().notes).toBe('one');
  });

  test('work goes on while saving fails', () => {
    const { app, now } = bench();
    app().setSaving({ kind: 'failed', says: 'The disk is full.', tries: 3 });
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'one' }]);
    expect(now().notes).toBe('one');
  });
});

describe('another document', () => {
  test('takes the place of the old one with its history; a selected opening that is gone is let go', () => {
    const { app } = bench();
    app().select('b');
    app().dispatch('Notes', [{ kind: 'setProject', field: 'notes', value: 'one' }]);
    app().replaceProject({ ...house(), openings: { a: newOpening('a', '101') } });
    expect(app().session.selectedId).toBeNull();
    expect(app().undo()).toEqual({ ok: true, changed: false });
    app().select('a');
    app().replaceProject(house());
    expect(app().session.selectedId).toBe('a');
  });
});

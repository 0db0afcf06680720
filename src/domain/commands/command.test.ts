import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { known } from '../testing/facts.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Amendment, Opening, Project, StoredSet } from '../model/project.ts';
import { aCommand, anEdit, anUndoable, aProject } from '../testing/arbitraries.ts';
import { verdictOn } from '../testing/verdicts.ts';
import { applyEdits, type Command, commandProblemInWords, type Edit } from './command.ts';
import { commandSchema, editSchema } from './edits.ts';

function house(): Project {
  return {
    ...newProject('p', 'House'),
    openings: { a: newOpening('a', '101'), b: newOpening('b', '102') },
    hardwareSets: { s: aSet({}) },
  };
}

const aSet = (over: Partial<StoredSet>): StoredSet => ({
  id: 's',
  number: 'HS-01',
  name: '',
  revision: 0,
  members: {},
  content: '',
  ...over,
});

function must(project: Project, edits: readonly Edit[], takingBack = false) {
  const applied = applyEdits(project, edits, takingBack);
  if (!applied.ok) throw new Error(`${applied.problem.kind}: ${commandProblemInWords(applied.problem)}`);
  return applied;
}

describe('the log of verdicts', () => {
  const verdict = verdictOn(house(), []);
  const append: Edit = { kind: 'appendVerdict', id: verdict.id, value: verdict };

  test('an entry has no inverse: nothing takes it out of the log again', () => {
    const { project, inverse } = must(house(), [append]);
    expect(inverse).toEqual([]);
    expect(project.verdicts[verdict.id]).toEqual(verdict);
    expect(project.verdictIndex[verdict.id]).toBe(verdict.hash);
  });

  test('an entry is never replaced, not by its like and not while something is taken back', () => {
    const { project } = must(house(), [append]);
    for (const takingBack of [false, true]) {
      const again = applyEdits(project, [append], takingBack);
      expect(again.ok ? '' : commandProblemInWords(again.problem)).toContain('never replaced');
    }
  });

  test('an edit of another version is refused in words', () => {
    const unknown = { kind: 'setReview', id: 'a', value: null } as unknown as Edit;
    const applied = applyEdits(house(), [unknown]);
    expect(applied.ok ? '' : commandProblemInWords(applied.problem)).toBe('This version knows no such edit.');
  });
});

describe('edits and their inverses', () => {
  test('for any project and edits: applying the inverse gives back a deeply equal document', () => {
    fc.assert(
      fc.property(aProject, fc.array(anUndoable, { minLength: 1, maxLength: 6 }), (project, edits) => {
        const before = structuredClone(project);
        const applied = applyEdits(project, edits);
        expect(project).toEqual(before);
        if (!applied.ok) return;
        const undone = must(applied.project, applied.inverse, true);
        expect(undone.project).toEqual(before);
        expect(must(undone.project, undone.inverse, true).project).toEqual(applied.project);
      }),
      { numRuns: 600 },
    );
  });

  test('every kind of edit was generated and accepted', () => {
    const kinds = new Set<string>();
    fc.assert(
      fc.property(aProject, anEdit, (project, edit) => {
        if (applyEdits(project, [edit]).ok) kinds.add(edit.kind);
      }),
      { numRuns: 2000 },
    );
    const all = editSchema.options.map((option) => option.shape.kind.value);
    expect([...kinds].toSorted()).toEqual([...all].toSorted());
  });

  test('an edit leaves every object it does not touch as it is', () => {
    const project = house();
    const { project: after } = must(project, [
      { kind: 'setFact', id: 'b', fact: 'latch', value: known('mortise') },
    ]);
    expect(after.openings['a']).toBe(project.openings['a']);
    expect(after.building).toBe(project.building);
    expect(after.basis).toBe(project.basis);
    expect(after.openings['b']).not.toBe(project.openings['b']);
  });

  test('a run takes one answer at a time, refuses an absurd length, and an opening without any has no entry', () => {
    const length = (value: number): Edit => ({
      kind: 'setRun',
      id: 'a',
      field: 'lengthFt',
      value: { value },
    });
    const { project, inverse } = must(house(), [length(120)]);
    expect(project.runs['a']).toEqual({ id: 'a', lengthFt: { value: 120 }, closetId: null, supplyId: null });
    expect(must(project, inverse, true).project.runs).toEqual({});
    expect(must(project, [{ kind: 'setRun', id: 'a', field: 'lengthFt', value: null }]).project.runs).toEqual(
      {},
    );
    for (const [feet, says] of [
      [-1, 'The run cannot be below 0 ft.'],
      [9000, 'The run cannot be above 5000 ft; check the unit.'],
    ] as const) {
      const refused = applyEdits(house(), [length(feet)]);
      expect(refused.ok ? '' : commandProblemInWords(refused.problem)).toBe(says);
    }
    expect(applyEdits(house(), [{ ...length(5), id: 'gone' } as Edit]).ok).toBe(false);
  });

  test('a removed amendment comes back at its old place', () => {
    const amendment = (id: string): Amendment => ({
      id,
      says: 'No magnets.',
      source: 'Letter',
      effect: 'prohibit',
      when: {},
      devices: [],
      releases: [],
      failModes: [],
    });
    const project = { ...house(), amendments: ['z', 'm', 'a'].map(amendment) };
    const removed = must(project, [{ kind: 'putAmendment', id: 'm', value: null }]);
    expect(removed.project.amendments.map((one) => one.id)).toEqual(['z', 'a']);
    expect(must(removed.project, removed.inverse, true).project).toEqual(project);
  });

  test('set numbers are merged into those kept before, and undo forgets only the new ones', () => {
    const project = must({ ...house(), hardwareSets: {} }, [
      { kind: 'keepSetNumbers', value: { strike: 'HS-01', magnet: 'HS-02' } },
    ]).project;
    const kept = must(project, [
      { kind: 'keepSetNumbers', value: { magnet: 'HS-07', trim: 'HS-03' } },
      { kind: 'keepSetNumbers', value: { trim: 'HS-04', strike: null } },
    ]);
    const numbers = (of: Project) =>
      Object.fromEntries(Object.values(of.hardwareSets).map((set) => [set.formerly, set.number]));
    expect(numbers(kept.project)).toEqual({ magnet: 'HS-07', trim: 'HS-04' });
    expect(numbers(project)).toEqual({ strike: 'HS-01', magnet: 'HS-02' });
    expect(must(kept.project, kept.inverse, true).project).toEqual(project);
  });

  test('use, area and common path of a space are set and taken back', () => {
    const hall = { ...newSpace('s', 'Hall'), use: 'classroom' as const, areaFt2: 1120 };
    const project = { ...house(), spaces: { s: hall } };
    const value = { ...hall, use: null, areaFt2: 960.5, commonPathFt: 75 };
    const edited = must(project, [{ kind: 'putSpace', id: 's', value }]);
    expect(edited.project.spaces['s']).toEqual(value);
    expect(must(edited.project, edited.inverse, true).project).toEqual(project);
  });

  test('undo returns to a document with two openings of one mark, as an import may bring it', () => {
    const project = {
      ...house(),
      openings: { a: newOpening('a', '101'), b: newOpening('b', '101') },
    };
    const renamed = must(project, [{ kind: 'setOpening', id: 'b', field: 'mark', value: '102' }]);
    expect(must(renamed.project, renamed.inverse, true).project).toEqual(project);
  });
});

describe('refusals', () => {
  const cases: readonly [string, Edit, RegExp][] = [
    [
      'a leaf 3 inches wide',
      { kind: 'setFact', id: 'a', fact: 'leafWidthIn', value: known(3) },
      /Leaf width cannot be below 12 in\./,
    ],
    [
      'a leaf 900 (millimeters?) wide',
      { kind: 'setFact', id: 'a', fact: 'leafWidthIn', value: known(900) },
      /Leaf width cannot be above 240 in; check the unit\./,
    ],
    [
      'a width that is not a number',
      { kind: 'setFact', id: 'a', fact: 'leafWidthIn', value: known(Number.NaN) },
      /Leaf width must be a number\./,
    ],
    ['a latch nobody makes', { kind: 'setFact', id: 'a', fact: 'latch', value: known('magic') }, /./],
    [
      'a fact this version does not know',
      { kind: 'setFact', id: 'a', fact: 'smell', value: known('oak') },
      /knows no fact called smell/,
    ],
    [
      'a name that every object inherits, as a fact',
      { kind: 'setFact', id: 'a', fact: 'constructor', value: known('x') },
      /knows no fact called constructor/,
    ],
    [
      'a building fact out of range',
      { kind: 'setBuildingFact', fact: 'storiesAboveGrade', value: known(0) },
      /Stories cannot be below 1 stories/,
    ],
    [
      'an opening that is gone',
      { kind: 'setFact', id: 'zz', fact: 'latch', value: known('mortise') },
      /no longer in the project/,
    ],
    [
      'an id that every object inherits',
      { kind: 'setOpening', id: 'constructor', field: 'notes', value: 'x' },
      /no longer in the project/,
    ],
    ['an empty mark', { kind: 'setOpening', id: 'a', field: 'mark', value: '' }, /needs a mark/],
    [
      'a mark of 41 characters',
      { kind: 'setOpening', id: 'a', field: 'mark', value: 'x'.repeat(41) },
      /at most 40/,
    ],
    ['a mark that is taken', { kind: 'setOpening', id: 'a', field: 'mark', value: '102' }, /already used/],
    [
      'a second opening of one mark',
      { kind: 'putOpening', id: 'c', value: newOpening('c', '101') },
      /already used/,
    ],
    ['a project without a name', { kind: 'setProject', field: 'name', value: '  ' }, /needs a name/],
    [
      'a half-made opening',
      { kind: 'putOpening', id: 'c', value: { id: 'c', mark: '103' } as unknown as Value },
      /value/,
    ],
    [
      'an opening that carries a bad fact',
      {
        kind: 'putOpening',
        id: 'c',
        value: { ...newOpening('c', '103'), facts: { leafWidthIn: known(2) } },
      },
      /Leaf width cannot be below/,
    ],
    [
      'a choice without a reason',
      {
        kind: 'setOverride',
        id: 'a',
        value: { candidate: 'x', reason: '', by: '', at: '2026-01-01T00:00:00Z' },
      },
      /reason/,
    ],
    [
      'an area below nothing',
      { kind: 'putSpace', id: 's', value: { ...newSpace('s', 'Hall'), areaFt2: -1 } },
      /area cannot be below 0 ft²/,
    ],
    [
      'an area that must be in another unit',
      { kind: 'putSpace', id: 's', value: { ...newSpace('s', 'Hall'), areaFt2: 6e6 } },
      /check the unit/,
    ],
    [
      'an empty set number',
      { kind: 'putHardwareSet', id: 's', value: aSet({ number: '' }) },
      /cannot be empty/,
    ],
    [
      'a number that another set has',
      { kind: 'putHardwareSet', id: 't', value: aSet({ id: 't' }) },
      /already the number of another set/,
    ],
    [
      'an assumption that does not say where it came from',
      { kind: 'setFact', id: 'a', fact: 'latch', value: { is: 'assumed', value: 'mortise', from: '' } },
      /from/,
    ],
  ];
  test.each(cases)('%s is refused with a sentence and changes nothing', (_what, edit, sentence) => {
    const project = house();
    const before = structuredClone(project);
    const applied = applyEdits(project, [{ kind: 'setProject', field: 'notes', value: 'first' }, edit]);
    expect(applied.ok ? 'accepted' : commandProblemInWords(applied.problem)).toMatch(sentence);
    expect(applied.ok).toBe(false);
    expect(project).toEqual(before);
  });
});

type Value = Extract<Edit, { kind: 'putOpening' }>['value'] & Opening;

test('every command comes back from JSON as it was', () => {
  fc.assert(
    fc.property(aCommand, (command) => {
      const back: Command = commandSchema.parse(JSON.parse(JSON.stringify(command)));
      // JSON knows no negative zero; nobody surveys one.
      expect(JSON.stringify(back)).toBe(JSON.stringify(commandSchema.parse(command)));
      expect(commandSchema.parse(command)).toEqual(command);
    }),
    { numRuns: 500 },
  );
});

test('an edit of a kind that this version does not know is refused, and nothing throws', () => {
  const unknownKind = { kind: 'constructor', value: 1 } as unknown as Edit;
  const applied = applyEdits(newProject('p', 'House'), [unknownKind]);
  expect(applied).toMatchObject({ ok: false, problem: { kind: 'badValue' } });
});

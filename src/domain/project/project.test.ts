import { describe, expect, test } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { decideAll } from '../decide/decide.ts';
import { whereFired } from '../manual/whereFired.ts';
import { importEdits } from '../import/again.ts';
import { importRows } from '../testing/tables.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import { type Project, openingsInOrder } from '../model/project.ts';
import { type ScorePart, scoreParts } from '../model/project.ts';
import { amendmentTouches, emptyAmendment, readAmendment } from './amendments.ts';
import { basisMeans, withEdition } from './basisMeans.ts';
import { mayImport, previewColumns, problemsInOrder } from './importPreview.ts';
import { floorsInOrder, moveFloor, newFloor, standsOnFloor } from './places.ts';
import { readWeight, weightShares } from './weightsMean.ts';

const floor = (id: string, level: number) => ({ id, name: `Floor ${id}`, level });
const house = (): Project => ({
  ...newProject('p', 'House'),
  floors: { a: floor('a', 1), b: floor('b', 2) },
  openings: {
    x: { ...newOpening('x', '101'), floorId: 'a', facts: { fireRatingMin: known(90) } },
    y: { ...newOpening('y', '102'), facts: { fireRatingMin: known(0), wallRatingMin: known(0) } },
    z: newOpening('z', '103'),
  },
});
const after = (project: Project, edits: Parameters<typeof applyEdits>[1]): Project => {
  const applied = applyEdits(project, edits);
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied.project;
};

describe('floors and spaces', () => {
  test('two floors change places, and no level is given twice', () => {
    const moved = after(house(), moveFloor(house(), 'a', 'up'));
    expect(floorsInOrder(moved).map((one) => one.id)).toEqual(['b', 'a']);
    expect(new Set(floorsInOrder(moved).map((one) => one.level)).size).toBe(2);
  });
  test('the lowest floor goes no lower', () => {
    expect(moveFloor(house(), 'a', 'down')).toEqual([]);
  });
  test('a new floor lies above the others', () => {
    expect(newFloor(house(), 'c', ' Roof ')).toEqual({
      ok: true,
      value: { id: 'c', name: 'Roof', level: 3 },
    });
  });
  test('a floor with an opening on it says which', () => {
    expect(standsOnFloor(house(), 'a')).toContain('101');
    expect(standsOnFloor(house(), 'b')).toBeUndefined();
  });
});

describe('an amendment', () => {
  const draft = {
    ...emptyAmendment,
    says: 'No fail-safe strikes.',
    source: 'Letter',
    when: [{ fact: 'fireRatingMin', text: '90' }],
  };
  test('says all that is missing at once', () => {
    const read = readAmendment('m', { ...emptyAmendment, effect: 'prohibit' });
    expect(!read.ok && Object.keys(read.problems)).toEqual(['says', 'source', 'devices']);
  });
  test('takes no condition without an answer, and none twice', () => {
    const when = [...draft.when, { fact: 'fireRatingMin', text: '20' }, { fact: 'doorType', text: '' }];
    const read = readAmendment('m', { ...draft, when });
    expect(!read.ok && Object.keys(read.problems)).toEqual(['when-1', 'when-2']);
  });
  test('counts the openings where it holds, and apart those where a fact is missing', () => {
    const read = readAmendment('m', draft);
    if (!read.ok) throw new Error('refused');
    const says = amendmentTouches(house(), read.amendment, decideAll(house()));
    expect(says).toContain('hold at 1 of 3 openings');
    expect(says).toContain('At 1 more a fact is missing');
  });
});

describe('the code basis', () => {
  test('two adopted codes: the stricter governs', () => {
    const both = withEdition(house().basis, 'nfpa101', '2021');
    expect(basisMeans(both).join(' ')).toContain('the stricter of the two governs');
    expect(basisMeans(house().basis).join(' ')).not.toContain('stricter');
  });
  test('a text that is no edition takes the book out', () => {
    expect(withEdition(house().basis, 'ibc', '').ibc).toBeNull();
    expect(basisMeans(withEdition(house().basis, 'ibc', '')).join(' ')).toContain('Neither');
  });
});

test('weights are read as typed, and shares of nothing are nothing', () => {
  expect(readWeight('12')).toEqual({ ok: true, value: 12 });
  expect([readWeight(''), readWeight('101'), readWeight('x')].map((one) => one.ok)).toEqual([
    false,
    false,
    false,
  ]);
  const { weights } = house();
  expect(weightShares(weights).security).toBe(30);
  const none = Object.fromEntries(scoreParts.map((part) => [part, 0])) as Record<ScorePart, number>;
  expect(weightShares(none).security).toBe(0);
});

describe('an import before it comes in', () => {
  const read = (rows: string[][], into = house()) => {
    let count = 0;
    const newId = () => `n${count++}`;
    return importRows(['Door No.', 'Width', 'Finish'], rows, { newId, into });
  };
  const bad = read([
    ['201', '36 in', 'PT'],
    ['201', '36 in', 'PT'],
    ['', '36 in', 'PT'],
  ]);
  test('is all or nothing unless the good rows are asked for', () => {
    expect(mayImport(bad, false)).toMatchObject({ ok: false, says: expect.stringContaining('3, 4') });
    expect(mayImport(bad, true)).toEqual({ ok: true });
    expect(mayImport(read([['', '36 in', '']]), true).ok).toBe(false);
  });
  test('names what refuses a row before what is only left open', () => {
    const order = problemsInOrder(
      read([
        ['201', 'wide', ''],
        ['', '36 in', 'PT'],
      ]),
    ).map((one) => one.refuses);
    expect(order).toEqual([true, false]);
  });
  test('tells column by column what was taken', () => {
    const columns = previewColumns(bad);
    expect(columns.map((column) => column.standing)).toEqual([
      'as written, 2 not taken',
      expect.stringContaining('1 known'),
      'unused',
    ]);
  });
  test('names what else a width lets assume, and leaves cells of refused rows uncounted', () => {
    const mixed = read([
      ['201', '36 in', ''],
      ['202', '915', ''],
      ['', 'wide', 'PT'],
    ]);
    expect(previewColumns(mixed).map((column) => column.standing)).toEqual([
      'as written, 1 not taken',
      '1 known, 1 not taken; Door type assumed from 1',
      'unused',
    ]);
  });
  test('comes in as one step that undo takes back whole', () => {
    const project = house();
    const applied = applyEdits(project, importEdits(project, bad));
    if (!applied.ok) throw new Error(applied.problem.kind);
    expect(Object.values(applied.project.openings).map((one) => one.mark)).toContain('201');
    expect(after(applied.project, applied.inverse)).toEqual(project);
  });
  test('an answer for the building is not written over', () => {
    const project = { ...house(), building: { sprinklered: known(true) } };
    const imported = { ...bad, building: { sprinklered: known(false), highRise: known(false) } };
    const facts = importEdits(project, imported).flatMap((edit) =>
      edit.kind === 'setBuildingFact' ? [edit.fact] : [],
    );
    expect(facts).toEqual(['highRise']);
  });
});

test('a rule is found at the openings in whose decision it took part, and at no other', () => {
  const project = house();
  const fired = whereFired(openingsInOrder(project), decideAll(project)).get('R-31') ?? [];
  const at = Object.fromEntries(fired.map((one) => [one.mark, one.how]));
  expect(at['101']).toEqual(['ruled devices out']);
  expect(at['102']).toBeUndefined();
  expect(at['103']).toEqual(['keeps devices open']);
});

import { describe, expect, test } from 'vitest';
import { newProject, newSpace } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { emptySpace, loadOfDraft, readSpace, spaceDraftOf, useAndAreaInWords } from './spaceDraft.ts';

const hall = {
  ...newSpace('s', 'Hall'),
  occupantLoad: 40,
  use: 'classroom' as const,
  areaFt2: 1120.5,
  commonPathFt: 60,
};
const project: Project = { ...newProject('p', 'House'), spaces: { s: hall } };
const read = (over: Partial<typeof emptySpace>) =>
  readSpace(project, 'n', { ...emptySpace, name: 'Room', ...over });

describe('a space as typed', () => {
  test('what is left empty is unknown and not zero', () => {
    expect(read({})).toEqual({ ok: true, value: newSpace('n', 'Room') });
  });
  test('comes back from the form as it was', () => {
    expect(readSpace(project, 's', spaceDraftOf(hall))).toEqual({ ok: true, value: hall });
  });
  test('area and path are read in the units people write', () => {
    expect(read({ use: 'business', area: '100 m²', commonPath: `40'-6"` })).toMatchObject({
      ok: true,
      value: { use: 'business', areaFt2: 1076.39, commonPathFt: 40.5 },
    });
  });
  test.each<[keyof typeof emptySpace, string]>([
    ['occupantLoad', '-1'],
    ['occupantLoad', '2.5'],
    ['occupantLoad', 'many'],
    ['occupantLoad', '1e3'],
    ['area', 'large'],
    ['area', '6000000'],
    ['commonPath', '75 people'],
    ['commonPath', '5001'],
  ])('%s “%s” is refused at its field', (field, text) => {
    expect(read({ [field]: text })).toMatchObject({ ok: false, field });
  });
  test('use and area stand in one cell, and say which of the two is missing', () => {
    expect(useAndAreaInWords(hall)).toBe('Classroom, 1,120.5 ft²');
    expect(useAndAreaInWords({ ...hall, areaFt2: null })).toBe('Classroom, area not known');
    expect(useAndAreaInWords({ ...hall, use: null })).toBe('1,120.5 ft², use not known');
    expect(useAndAreaInWords({ use: null, areaFt2: null })).toBeUndefined();
  });
  test('the load shows before anything is kept, and not while a figure cannot be read', () => {
    const draft = { ...emptySpace, use: 'classroom', area: '1120' };
    expect(loadOfDraft(project, draft)?.people).toBe(56);
    expect(loadOfDraft(project, { ...draft, area: '11x' })).toBeUndefined();
  });
});

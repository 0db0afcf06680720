import { describe, expect, test } from 'vitest';
import { newProject } from '../model/newProject.ts';
import { openProjectData, openProjectText, openProblemInWords } from './file.ts';
import { newestFormat } from './migrations.ts';

/** P5: what is not for this version is refused with a plain sentence. */
const sentence = (text: string) => {
  const opened = openProjectText(text);
  return opened.ok ? 'opened' : openProblemInWords(opened.problem);
};

describe('P5: files that are refused', () => {
  test('a file of a newer version, even when everything in it could be read', () => {
    const file = {
      format: 'latchward-project',
      formatVersion: newestFormat + 1,
      project: newProject('p', 'House'),
    };
    const before = structuredClone(file);
    const opened = openProjectData(file);
    expect(opened.ok ? 'opened' : opened.problem).toEqual({
      kind: 'tooNew',
      found: newestFormat + 1,
      newest: newestFormat,
    });
    expect(file).toEqual(before);
    expect(sentence(JSON.stringify(file))).toMatch(/newer version.*left untouched/);
  });

  test.each([
    ['no JSON', '{"format": "latchward-pro', /not readable as JSON/],
    ['an empty file', '', /not readable as JSON/],
    ['JSON of something else', '{"type":"FeatureCollection"}', /not a Latchward project file/],
    ['a list', '[]', /not a Latchward project file/],
    ['null', 'null', /not a Latchward project file/],
    [
      'a format of zero',
      '{"format":"latchward-project","formatVersion":0,"project":{}}',
      /not a Latchward project file/,
    ],
    [
      'a format of 1.5',
      '{"format":"latchward-project","formatVersion":1.5,"project":{}}',
      /not a Latchward project file/,
    ],
    ['no project inside', '{"format":"latchward-project","formatVersion":1}', /damaged/],
    [
      'a project without openings',
      '{"format":"latchward-project","formatVersion":1,"project":{"id":"p"}}',
      /damaged.*untouched/,
    ],
  ])('%s', (_what, text, words) => {
    expect(sentence(text)).toMatch(words);
  });

  test('a byte order mark in front is no damage', () => {
    const text = JSON.stringify({
      format: 'latchward-project',
      formatVersion: newestFormat,
      project: newProject('p', 'House'),
    });
    expect(sentence(`\uFEFF${text}`)).toBe('opened');
  });
});

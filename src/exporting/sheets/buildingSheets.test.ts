import { describe, expect, it } from 'vitest';
import { allFindings } from '../../domain/building/alongTheWay.ts';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import type { PathFinding } from '../../domain/building/paths.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { buildingLines, linesAbout } from './buildingLines.ts';
import { findingsSheet } from './findingsSheet.ts';
import { registerInWords } from './reviewRegister.ts';

const project = {
  ...newProject('p', 'House'),
  openings: { a: newOpening('a', '101'), b: newOpening('b', '102') },
};
const path = (grade: PathFinding['grade'], openingIds: readonly string[]): PathFinding => ({
  ruleId: 'R-55',
  grade,
  sentence: `A ${grade}.`,
  openingIds,
});
const paths = [path('note', ['a']), path('should', ['b']), path('must', ['a', 'b'])];
const narrow: BuildingFinding = {
  kind: 'tooNarrow',
  severity: 'serious',
  conditions: ['fireAlarm'],
  spaceId: null,
  openingIds: ['a'],
  path: [],
  closing: null,
  says: 'Narrow.',
};

describe('rules along the way out', () => {
  it('stand among what was found, graver grades first, numbered through', () => {
    const sheet = findingsSheet(project, allFindings({ findings: [narrow] }, paths, []));
    expect(sheet.groups.map((group) => `${group.severity} ${group.says}`)).toEqual([
      'Severe 1 finding',
      'Serious 2 findings',
      'Note 1 finding',
    ]);
    const lines = sheet.groups.flatMap((group) => group.lines);
    expect(lines.map((line) => line.number)).toEqual([1, 2, 3, 4]);
    expect(lines[0]).toMatchObject({ says: 'A must.', openings: ['101', '102'], way: ['101', '102'] });
    expect(lines[0]?.source).toMatch(/^R-55 · IBC 2021/);
    expect(lines[1]).toMatchObject({ says: 'Narrow.', source: '', when: 'Fire alarm' });
  });

  it('need a name only when graded so, and are told at every opening they name', () => {
    expect(buildingLines(project, paths).map((line) => line.reason.grade)).toEqual(['must', 'should']);
    expect(linesAbout(project, paths, 'a').map((line) => line.reason.sentence)).toEqual([
      'A note.',
      'A must.',
    ]);
  });

  it('are counted beside the openings on the register', () => {
    expect(registerInWords([], 1)).toBe(
      'The rules here required no signature at any opening. That is not a review. 1 line about the building needs a signature.',
    );
  });
});

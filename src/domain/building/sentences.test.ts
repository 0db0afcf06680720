import { describe, expect, test } from 'vitest';
import { newProject, newSpace } from '../model/newProject.ts';
import type { BuildingFinding } from './finding.ts';
import { buildingInNumbers } from './sentences.ts';

const found = (severity: BuildingFinding['severity']): BuildingFinding => ({
  kind: 'noLevel',
  severity,
  conditions: [],
  spaceId: null,
  openingIds: [],
  path: [],
  closing: null,
  says: '',
});

describe('the building in one line', () => {
  test('a building of nothing', () => {
    expect(buildingInNumbers(newProject('p', 'New'), [])).toBe(
      '0 spaces, 0 openings; 0 severe, 0 serious, 0 notes',
    );
  });

  test('one of a thing is one thing, and each weight is counted by itself', () => {
    const project = { ...newProject('p', 'New'), spaces: { hall: newSpace('hall', 'Hall') } };
    expect(
      buildingInNumbers(project, [found('severe'), found('serious'), found('serious'), found('note')]),
    ).toBe('1 space, 0 openings; 1 severe, 2 serious, 1 note');
  });
});

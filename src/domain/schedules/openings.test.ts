import { describe, expect, it } from 'vitest';
import { decideAll } from '../decide/decide.ts';
import { type Facts } from '../model/fact.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { nothingToBuy } from '../sets/forOrder.ts';
import { openingColumns, scheduleRows } from './openings.ts';

const facts: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  leafWidthIn: known(36),
  leafHeightIn: known(84),
  latch: known('mortise'),
  readerSides: known('secure'),
  fireRatingMin: known(45),
  wallRatingMin: known(60),
  egressRole: known('exitAccess'),
  roomUse: known('serverRoom'),
  occupantLoad: known(1),
};
const project: Project = {
  ...newProject('p', 'Project'),
  floors: { f: { id: 'f', name: 'Ground', level: 1 } },
  spaces: {
    c: { ...newSpace('c', 'Corridor'), floorId: 'f', kind: 'corridor' },
  },
  openings: {
    b: { ...newOpening('b', '10'), floorId: 'f', fromSpaceId: 'c', facts, notes: 'Check.' },
    a: { ...newOpening('a', '9'), floorId: 'f', toSpaceId: 'constructor' },
  },
};
const decisions = decideAll(project);
const read = () => scheduleRows(project, decisions);

describe('opening schedule', () => {
  it('stands in schedule order with the words of the domain', () => {
    const rows = read();
    expect(rows.map((row) => row.mark)).toEqual(['9', '10']);
    expect(rows[1]).toMatchObject({
      floor: 'Ground',
      from: 'Corridor',
      to: '',
      doorType: 'Single swinging leaf',
      size: '3\'-0" × 7\'-0" × –',
      leaf: 'Hollow metal',
      label: '45 min',
      egressRole: 'Along the egress path of a room or corridor',
      notes: 'Check.',
      set: expect.stringMatching(/^HS-\d\d$/),
    });
    expect(rows[1]?.failMode).toMatch(/^Fail (safe|secure)$/);
  });

  it('leaves empty what was never surveyed, and counts what is missing', () => {
    const rows = read();
    expect(rows[0]).toMatchObject({ doorType: '', size: '', label: '', to: '', floor: 'Ground' });
    expect(rows[0]?.missing).toBeGreaterThan(0);
  });

  it('says an unrated opening in words', () => {
    const unrated = {
      ...project,
      openings: { b: { ...project.openings['b'], facts: { ...facts, fireRatingMin: known(0) } } },
    } as Project;
    expect(scheduleRows(unrated, decideAll(unrated))[0]?.label).toBe('None');
  });

  it('says of an opening that stays as it is that there is nothing to buy', () => {
    const left = {
      ...project,
      openings: { b: { ...project.openings['b'], facts: { control: known('notControlled') } } },
    } as Project;
    expect(scheduleRows(left, decideAll(left))[0]).toMatchObject({ state: 'left', order: nothingToBuy });
  });

  it('has a heading for every printed column, no two alike', () => {
    const [first] = read();
    const headings = Object.values(openingColumns);
    expect(new Set(headings).size).toBe(headings.length);
    for (const key of Object.keys(openingColumns)) expect(first).toHaveProperty(key);
  });
});

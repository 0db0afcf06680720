import { describe, expect, test } from 'vitest';
import type { Facts } from '../model/fact.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { known, unknown } from '../testing/facts.ts';
import { butLines, differsMost, templateOf } from './sameBut.ts';
import { factsLike } from './takeOver.ts';
import { openingLikeOn, templatesFor } from './templates.ts';

const door = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  leafWidthIn: known(36),
  leafHeightIn: known(84),
  handing: known('LH'),
  fireLabel: known('none'),
  fireRatingMin: known(0),
  readerSides: known('secure'),
  latch: known('bored'),
  roomUse: known('office'),
} as const satisfies Facts;

function building(doors: Readonly<Record<string, Facts>>): Project {
  const openings = Object.entries(doors).map(([mark, facts]): [string, Opening] => [
    mark,
    { ...newOpening(mark, mark), facts },
  ]);
  return { ...newProject('p', 'P'), openings: Object.fromEntries(openings) };
}
const at = (project: Project, mark: string) => project.openings[mark] as Opening;
const names = (parts: readonly { readonly name: string }[]) => parts.map(({ name }) => name);

describe('same as another door, but', () => {
  test('where nothing varies: size, hand, label and reader', () => {
    const project = building({ a: door });
    expect(names(differsMost(project, at(project, 'a')))).toEqual(['Size', 'Hand', 'Label', 'Reader']);
  });

  test('what doors of the same kind differ in most comes first, and never more than four', () => {
    const project = building({
      a: door,
      b: { ...door, roomUse: known('storage'), handing: known('RH') },
      c: { ...door, roomUse: known('closet') },
      // Another kind of door: what it differs in tells nothing.
      d: {
        ...door,
        leafMaterial: known('glassFrameless'),
        latch: known('patch'),
        readerSides: known('both'),
      },
      e: {
        ...door,
        leafMaterial: known('glassFrameless'),
        latch: known('patch'),
        readerSides: known('both'),
      },
      f: {
        ...door,
        leafMaterial: known('glassFrameless'),
        latch: known('patch'),
        readerSides: known('both'),
      },
    });
    expect(names(differsMost(project, at(project, 'a')))).toEqual(['Room', 'Hand', 'Size', 'Label']);
  });

  test('what nobody stated at the template has no line', () => {
    const { handing: _hand, ...bare } = door;
    const project = building({ a: { ...bare, readerSides: unknown } });
    expect(names(differsMost(project, at(project, 'a')))).toEqual(['Size', 'Label', 'Lock', 'Room']);
  });

  test('other answers are whole ones of doors alike, most frequent first; half an answer is none', () => {
    const labeled = { ...door, fireLabel: known('seen'), fireRatingMin: known(20) } as const satisfies Facts;
    const project = building({
      a: door,
      b: { ...labeled, fireRatingMin: known(90) },
      c: labeled,
      d: labeled,
      e: { ...door, fireLabel: known('seen'), fireRatingMin: unknown },
      n: factsLike({ mark: 'a', facts: door }),
    });
    const label = butLines(project, at(project, 'a'), at(project, 'n')).find(({ name }) => name === 'Label');
    expect(label?.says).toBe('Fire label none found; fire rating of the door 0 min');
    expect(label?.seen).toBe(false);
    expect(label?.others.map(({ facts }) => facts.map(({ fact }) => fact))).toEqual([
      [known('seen'), known(20)],
      [known('seen'), known(90)],
    ]);
    const labelHere = { ...at(project, 'n'), facts: { ...at(project, 'n').facts, ...labeled } };
    const now = butLines(project, at(project, 'a'), labelHere).find(({ name }) => name === 'Label');
    expect(now?.others.map(({ says }) => says)).toEqual([
      'Fire label none found; fire rating of the door 0 min',
      'Fire rating of the door 90 min',
    ]);
  });

  test('an answer at the new door changes its own line and never which lines there are', () => {
    const project = building({
      a: door,
      b: { ...door, leafWidthIn: known(32) },
      n: { ...factsLike({ mark: 'a', facts: door }), roomUse: known('storage') },
    });
    const lines = butLines(project, at(project, 'a'), at(project, 'n'));
    expect(names(lines)).toEqual(['Size', 'Hand', 'Label', 'Reader']);
    const sized = { ...at(project, 'n'), facts: { ...at(project, 'n').facts, leafWidthIn: known(32) } };
    const size = butLines(
      { ...project, openings: { ...project.openings, n: sized } },
      at(project, 'a'),
      sized,
    )[0];
    expect(size?.seen).toBe(true);
    expect(size?.others.map(({ facts }) => facts[0]?.fact)).toEqual([known(36)]);
  });

  test('the template is the door most of the assumed facts come from, while any is assumed', () => {
    const project = building({ a: door, b: door, n: { ...factsLike({ mark: 'a', facts: door }) } });
    expect(templateOf(project, at(project, 'n'))?.mark).toBe('a');
    expect(templateOf(project, at(project, 'b'))).toBeUndefined();
  });
});

describe('a template', () => {
  const project = building({ '2-03': door, '2-13': door, '1-03': door, '203A': door, '2-04': {} });

  test('is found by any part of its mark, signs left out; what has no answer is none', () => {
    const marks = (typed: string) =>
      templatesFor(project, typed, { id: 'x', floorId: null }).shown.map(({ mark }) => mark);
    expect(marks('203')).toEqual(['2-03', '203A']);
    expect(marks('03')).toEqual(['1-03', '2-03', '203A']);
    expect(marks('2 1')).toEqual(['2-13']);
    expect(marks('2-04')).toEqual([]);
  });

  test('of the floor one stands on comes first, and the rest is counted', () => {
    const many = building(Object.fromEntries(Array.from({ length: 9 }, (_, n) => [`1-0${n + 1}`, door])));
    const moved = { ...many, openings: { ...many.openings, '1-09': { ...at(many, '1-09'), floorId: 'f' } } };
    const found = templatesFor(moved, '', { id: 'x', floorId: 'f' });
    expect(found.shown[0]).toEqual({
      id: '1-09',
      mark: '1-09',
      says: 'Hollow metal; single swinging leaf; bored (cylindrical) latch',
    });
    expect([found.shown.length, found.more]).toEqual([6, 3]);
  });

  test('gives all of it as assumed, label and preparation too, and no room of another floor', () => {
    const like = {
      ...at(project, '2-03'),
      facts: { ...door, strikePrep: known('ansi478' as const) },
      floorId: 'b',
      fromSpaceId: 's',
    };
    const there = openingLikeOn('n', '1-04', like, 'a');
    expect(there).toMatchObject({ mark: '1-04', floorId: 'a', fromSpaceId: null });
    expect(new Set(Object.values(there.facts).map(({ is }) => is))).toEqual(new Set(['assumed']));
    expect(there.facts.strikePrep?.is).toBe('assumed');
    expect(openingLikeOn('n', '2-05', like, 'b').fromSpaceId).toBe('s');
  });
});

import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { decide } from '../../domain/decide/decide.ts';
import { candidates } from '../../domain/devices/candidates.ts';
import { sheetProblems, meet, textsOf, wordsOf } from '../testing/sheetChecks.ts';
import { drawingsAt, openingDrawings, type Place } from './kinds.ts';
import { boundsOf, type Drawing, textBox } from './scene.ts';

const demo = demoProject();
const openings = Object.values(demo.openings);
const decisions = openings.map((opening) => decide(demo, opening));
const places: readonly Place[] = ['desk', 'walk', 'sheet', 'crowdedSheet', 'ownSheet'];

/** The one-line diagram of every arrangement that hangs on a wire, lawful or not, at openings taken in turn. */
const lines: readonly Drawing[] = candidates.flatMap((candidate, index) => {
  const opening = openings[index % openings.length];
  if (!opening) return [];
  const override = { candidate: candidate.id, reason: '', by: '', at: '' };
  return (['desk', 'ownSheet'] as const).flatMap((place) =>
    drawingsAt(openingDrawings, decide(demo, { ...opening, override }), place).filter(
      ({ title }) => title === 'One-line diagram',
    ),
  );
});

test.each(places)('every drawing set at %s keeps its sheet and carries the name of its kind', (place) => {
  const names = openingDrawings.map(({ name }) => name);
  for (const decision of decisions) {
    for (const drawing of drawingsAt(openingDrawings, decision, place)) {
      expect(sheetProblems(drawing)).toEqual([]);
      expect(names).toContain(drawing.title);
      expect(drawing.description).not.toBe('');
    }
  }
});

test.each(['sheet', 'crowdedSheet'] as const)('drawings side by side on a %s are at one scale', (place) => {
  for (const decision of decisions) {
    // What no usual scale can hold says so itself.
    const scales = drawingsAt(openingDrawings, decision, place).flatMap(({ scale }) =>
      scale === undefined || scale === 'Not to scale' ? [] : scale,
    );
    expect(new Set(scales).size).toBeLessThanOrEqual(1);
  }
});

test('every kind is set at one place at least, and somewhere at a desk', () => {
  for (const { sizes } of openingDrawings) {
    expect(sizes.desk).toBeDefined();
    expect(places.some((place) => sizes[place] !== undefined)).toBe(true);
  }
  const titles = new Set(
    decisions.flatMap((one) => drawingsAt(openingDrawings, one, 'desk')).map(({ title }) => title),
  );
  expect(titles).toEqual(new Set(openingDrawings.map(({ name }) => name)));
});

test('a one-line diagram stays inside its sheet, no words touch, and no wire runs through words', () => {
  expect(lines.length).toBeGreaterThan(100);
  for (const drawing of lines) {
    expect(sheetProblems(drawing)).toEqual([]);
    const words = textsOf(drawing).map(textBox);
    const struck = drawing.primitives.filter(
      (one) => one.kind !== 'text' && words.some((box) => meet(box, boundsOf(one))),
    );
    expect(struck).toEqual([]);
  }
});

test('it names supply, relay and lock, and says in words what is drawn', () => {
  for (const drawing of lines) {
    const text = wordsOf(drawing).join(' ');
    expect(text).toContain('Lock circuit');
    expect(text).toContain('Relay of the controller');
    expect(drawing.description).toContain('Relay of the controller');
  }
});

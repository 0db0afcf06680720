import { expect, test } from 'vitest';
import { releases } from '../../domain/devices/candidates.ts';
import { deviceIds } from '../../domain/devices/devices.ts';
import { failModeWords } from '../../domain/words/arrangement.ts';
import { glossary } from '../../domain/manual/glossary.ts';
import { deviceSymbols } from './device-symbols.ts';
import { symbolGrid } from './symbol.ts';
import { symbolGroups } from './symbols.ts';
import { failModeSymbols, releaseSymbols, stateSymbols, statusSymbols } from './word-symbols.ts';

const all = symbolGroups.flatMap(({ id, symbols }) =>
  Object.entries(symbols).map(([key, symbol]) => [`${id} ${key}`, symbol] as const),
);

test('there is one symbol for every device and every release', () => {
  expect(Object.keys(deviceSymbols).toSorted()).toEqual(deviceIds.toSorted());
  expect(Object.keys(releaseSymbols).toSorted()).toEqual(Object.keys(releases).toSorted());
});

test.each(all)('%s has a word, a meaning, and coordinates on the grid', (_name, symbol) => {
  expect(symbol.word).not.toBe('');
  expect(symbol.meaning).not.toBe('');
  for (const { d } of symbol.strokes) {
    // Absolute coordinates only: arcs' relative legs are made by ring() and stay inside by its radius.
    const absolute = [...d.matchAll(/[MLHV](-?[\d.]+)/g)].map((match) => Number(match[1]));
    for (const value of absolute) {
      expect(value).toBeGreaterThanOrEqual(0);
      expect(value).toBeLessThanOrEqual(symbolGrid);
    }
  }
});

test('what a cell of the condition table or a mark says stands in the glossary', () => {
  const explained = new Set(glossary.flatMap(({ terms }) => terms.map(({ term }) => term)));
  const words = [...Object.values(stateSymbols), ...Object.values(statusSymbols)].map(({ word }) => word);
  expect(words.filter((word) => !explained.has(word))).toEqual([]);
  expect(Object.entries(failModeSymbols).map(([id, { word }]) => [id, word])).toEqual(
    Object.entries(failModeWords),
  );
});

test('no two words of one group look alike', () => {
  for (const { symbols } of symbolGroups) {
    const drawn = Object.values(symbols).map(({ strokes }) => JSON.stringify(strokes));
    expect(new Set(drawn).size).toBe(drawn.length);
  }
});

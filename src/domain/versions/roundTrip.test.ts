import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aProject } from '../testing/arbitraries.ts';
import { openProjectText, saveProjectText } from './file.ts';

function opened(text: string) {
  const result = openProjectText(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result;
}

/** P6: what the app writes, the app reads, and writes again as it was. */
test('P6: save, open, save gives identical bytes, and nothing is migrated or set aside', () => {
  fc.assert(
    fc.property(aProject, (project) => {
      const text = saveProjectText(project);
      const back = opened(text);
      expect(back.setAside).toEqual([]);
      expect(back.migrated).toEqual([]);
      expect(saveProjectText(back.project)).toBe(text);
      expect(JSON.stringify(back.project.openings)).toHaveLength(JSON.stringify(project.openings).length);
    }),
    { numRuns: 500 },
  );
});

/** The one name that is not carried along: the schema drops `__proto__`, which could reach into other objects. */
const anything = fc
  .jsonValue({ maxDepth: 2 })
  .filter((value) => !JSON.stringify(value).includes('__proto__'));
const newerKey = fc.constantFrom('zNew', 'aNew', '12', 'constructor', 'hasOwnProperty');

test('whatever a newer version added, at any place, survives', () => {
  fc.assert(
    fc.property(aProject, newerKey, anything, (project, key, extra) => {
      const add = <T extends object>(thing: T): T =>
        Object.hasOwn(thing, key) ? thing : { ...thing, [key]: extra };
      const addToAll = <T extends object>(all: Readonly<Record<string, T>>) =>
        Object.fromEntries(Object.entries(all).map(([id, one]) => [id, add(one)]));
      const richer = add({
        ...project,
        basis: add(project.basis),
        weights: add(project.weights),
        building: add(project.building),
        amendments: project.amendments.map(add),
        floors: addToAll(project.floors),
        spaces: addToAll(project.spaces),
        openings: addToAll(
          Object.fromEntries(
            Object.entries(project.openings).map(([id, one]) => [id, { ...one, facts: add(one.facts) }]),
          ),
        ),
      });
      const text = saveProjectText(richer);
      expect(saveProjectText(opened(text).project)).toBe(text);
    }),
    { numRuns: 300 },
  );
});

test('the order in which things were entered does not show in the file', () => {
  fc.assert(
    fc.property(aProject, (project) => {
      const reversed = Object.fromEntries(Object.entries(project).toReversed()) as unknown as typeof project;
      expect(saveProjectText(reversed)).toBe(saveProjectText(project));
    }),
  );
});

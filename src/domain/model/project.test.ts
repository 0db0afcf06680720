import fc from 'fast-check';
import { describe, expect, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import { aProject, aValueOf } from '../testing/arbitraries.ts';
import { factSchema } from './fact.ts';
import { type FactKey, factKeys, factSchemas, fieldInfo } from './fields.ts';
import { newOpening, newProject } from './newProject.ts';
import { idSchema } from './ids.ts';
import {
  compareMarks,
  type Opening,
  openingSchema,
  openingsInOrder,
  type Project,
  projectSchema,
} from './project.ts';

describe('the document', () => {
  test('a new project and a new opening are valid, and have every key of the schema', () => {
    expect(projectSchema.parse(newProject('p', 'House'))).toEqual(newProject('p', 'House'));
    expect(openingSchema.parse(newOpening('a', '101'))).toEqual(newOpening('a', '101'));
    // What was set aside, and who wrote what, is there only once something was.
    const { setAside: _setAside, history: _history, ...always } = projectSchema.shape;
    expect(Object.keys(newProject('p', 'House')).toSorted()).toEqual(Object.keys(always).toSorted());
    // Only a door out of a building model has a name there.
    const { externalId: _externalId, ...ofAnOpening } = openingSchema.shape;
    expect(Object.keys(newOpening('a', '1')).toSorted()).toEqual(Object.keys(ofAnOpening).toSorted());
  });

  test('the types written out by hand have the keys of the schemas', () => {
    expectTypeOf<keyof Opening>().toEqualTypeOf<keyof (typeof openingSchema)['shape']>();
    expectTypeOf<keyof Project>().toEqualTypeOf<keyof (typeof projectSchema)['shape']>();
    expectTypeOf<Opening['floorId']>().toEqualTypeOf<z.infer<typeof openingSchema>['floorId']>();
  });

  test('made-up projects are valid, and validation changes nothing in them', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        expect(projectSchema.parse(project)).toEqual(project);
      }),
      { numRuns: 200 },
    );
  });

  test.each(['', 'x'.repeat(65), '__proto__', 'constructor', 'hasOwnProperty'])('%j is no id', (id) => {
    expect(idSchema.safeParse(id).success).toBe(false);
  });
});

describe('facts', () => {
  test.each(factKeys)('%s has a label, a question and a range that its schema keeps', (key) => {
    const info = fieldInfo(key);
    expect(info.label).not.toBe('');
    expect(info.ask).toMatch(/[?.]$/);
    const accepts = (value: unknown) => factSchemas[key].safeParse(value).success;
    const good = {
      yesNo: [true, false],
      choice: Object.keys(info.options ?? {}),
      number: [info.min, info.max],
    };
    const bad = {
      yesNo: ['yes', 1, null],
      choice: ['', 'no such thing', null],
      number: [(info.min ?? 0) - 0.1, (info.max ?? 0) + 0.1, Number.NaN, '36'],
    };
    expect(good[info.kind].map(accepts)).not.toContain(false);
    expect(bad[info.kind].map(accepts)).not.toContain(true);
  });

  test('an assumed value says where it came from', () => {
    const schema = factSchema(factSchemas.latch);
    expect(schema.safeParse({ is: 'assumed', value: 'mortise', from: 'usual here' }).success).toBe(true);
    expect(schema.safeParse({ is: 'assumed', value: 'mortise' }).success).toBe(false);
    expect(schema.safeParse({ is: 'assumed', value: 'mortise', from: '' }).success).toBe(false);
  });

  test('made-up values fit their fields', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...factKeys).chain((key) => fc.tuple(fc.constant<FactKey>(key), aValueOf(key))),
        ([key, value]) => factSchemas[key].safeParse(value).success,
      ),
    );
  });
});

describe('the order of openings', () => {
  test('by floor from the lowest up, then as people count; without a floor last', () => {
    const at = (id: string, mark: string, floorId: string | null) => ({ ...newOpening(id, mark), floorId });
    const project: Project = {
      ...newProject('p', 'House'),
      floors: { up: { id: 'up', name: 'Second', level: 2 }, down: { id: 'down', name: 'First', level: 1 } },
      openings: {
        a: at('a', '10', 'down'),
        b: at('b', '9', 'down'),
        c: at('c', '1', null),
        d: at('d', '2', 'up'),
        e: at('e', '3', 'a floor that is gone'),
      },
    };
    expect(openingsInOrder(project).map((opening) => opening.mark)).toEqual(['9', '10', '2', '1', '3']);
    expect(Object.keys(project.openings)).toEqual(['a', 'b', 'c', 'd', 'e']);
  });

  test('marks are compared as people count', () => {
    expect(['101A', '12', '101', '9'].toSorted(compareMarks)).toEqual(['9', '12', '101', '101A']);
  });
});

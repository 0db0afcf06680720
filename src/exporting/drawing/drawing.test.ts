import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { candidates } from '../../domain/devices/candidates.ts';
import { deviceIds } from '../../domain/devices/devices.ts';
import { type FactValues, factSchemas } from '../../domain/model/fields.ts';
import { elevation } from './elevation.ts';
import { feetInches, wrap } from './lettering.ts';
import type { Choice } from './locks.ts';
import { drawingSizes } from './paper.ts';
import { planView } from './plan.ts';
import { sheetProblems, wordsOf } from '../testing/sheetChecks.ts';
import { boundsOf, type Drawing } from './scene.ts';

const doorTypes = factSchemas.doorType.options;
const leafMaterials = factSchemas.leafMaterial.options;
const frameMaterials = factSchemas.frameMaterial.options;
const sizes = Object.entries(drawingSizes);

const leavesOf = (drawing: Drawing) =>
  drawing.primitives.filter((p) => p.kind === 'rect' && p.part === 'leaf');

const choiceOf = (deviceId: Choice['deviceId']): Choice => {
  const found = candidates.find((candidate) => candidate.deviceId === deviceId);
  if (found === undefined) throw new Error(`No candidate uses ${deviceId}.`);
  return found;
};

/** Any mixture of the facts a drawing looks at, each known or not. */
const anyFacts: fc.Arbitrary<FactValues> = fc
  .record(
    {
      doorType: fc.constantFrom(...doorTypes),
      leafMaterial: fc.constantFrom(...leafMaterials),
      frameMaterial: fc.constantFrom(...frameMaterials),
      leafWidthIn: fc.double({ min: 12, max: 240, noNaN: true }),
      leafHeightIn: fc.double({ min: 24, max: 240, noNaN: true }),
      handing: fc.constantFrom(...factSchemas.handing.options),
      swingsWithEgress: fc.boolean(),
      visionPanel: fc.constantFrom(...factSchemas.visionPanel.options),
      hinges: fc.constantFrom(...factSchemas.hinges.options),
      glassRails: fc.constantFrom(...factSchemas.glassRails.options),
      opensTo90: fc.boolean(),
      wallConstruction: fc.constantFrom(...factSchemas.wallConstruction.options),
      latch: fc.constantFrom(...factSchemas.latch.options),
      panicPresent: fc.boolean(),
      lessBottomRod: fc.boolean(),
      egressHardwareHeightIn: fc.double({ min: 0, max: 120, noNaN: true }),
      closing: fc.constantFrom(...factSchemas.closing.options),
      inactiveBolts: fc.constantFrom(...factSchemas.inactiveBolts.options),
      coordinator: fc.boolean(),
      mullion: fc.boolean(),
      fireRatingMin: fc.integer({ min: 0, max: 240 }),
      fireLabel: fc.constantFrom('seen', 'illegible', 'removed', 'none'),
      exitSign: fc.boolean(),
      readerSides: fc.constantFrom(...factSchemas.readerSides.options),
      operator: fc.constantFrom(...factSchemas.operator.options),
      breakaway: fc.boolean(),
    },
    { requiredKeys: [] },
  )
  .map((facts) => facts as FactValues);
const anyChoice = fc.option(fc.constantFrom<Choice>(...candidates), { nil: undefined });

describe.each([
  ['elevation', elevation],
  ['plan', planView],
] as const)('the %s', (_name, draw) => {
  test.each(doorTypes)(
    'of %s keeps inside its sheet with texts apart, for every material and device',
    (doorType) => {
      for (const leafMaterial of leafMaterials) {
        for (const deviceId of deviceIds) {
          expect(
            sheetProblems(
              draw(
                { doorType, leafMaterial, readerSides: 'both', closing: 'selfClosing' },
                choiceOf(deviceId),
              ),
            ),
          ).toEqual([]);
        }
      }
    },
  );

  test('keeps inside its sheet with texts apart, whatever is known', () => {
    fc.assert(
      fc.property(anyFacts, anyChoice, fc.constantFrom(...sizes), (facts, choice, [, size]) => {
        expect(sheetProblems(draw(facts, choice, size))).toEqual([]);
      }),
      { numRuns: 600 },
    );
  });

  test('says what nobody surveyed, in the drawing and in words', () => {
    const drawing = draw({}, undefined);
    expect(wordsOf(drawing).join(' ')).toContain('? not surveyed');
    expect(drawing.notSurveyed).toContain('Leaf width');
    expect(drawing.description).toContain('Not surveyed:');
    expect(drawing.primitives.some((p) => 'pen' in p && p.pen.dash === 'unknown')).toBe(true);
  });

  test('letters the width it was given', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 240 }),
        fc.constantFrom(...doorTypes),
        (leafWidthIn, doorType) => {
          const words = wordsOf(draw({ doorType, leafWidthIn }, undefined)).join(' ');
          expect(words).toContain(feetInches(doorType === 'revolving' ? 2 * leafWidthIn : leafWidthIn));
        },
      ),
    );
  });

  test('loses no label: those that find no room in words are numbered and listed', () => {
    fc.assert(
      fc.property(
        anyFacts,
        anyChoice,
        fc.constantFrom(drawingSizes.sheet, drawingSizes.phone),
        (facts, choice, size) => {
          const drawing = draw(facts, choice, size);
          const words = wordsOf(drawing);
          const shown =
            drawing.labels === 'numbers'
              ? drawing.notes.map((_, i) => `${i + 1}`)
              : drawing.notes.flatMap((note) => note.split(' '));
          for (const word of shown) expect(words.join(' ')).toContain(word);
        },
      ),
      { numRuns: 200 },
    );
  });

  test('names the chosen device', () => {
    for (const candidate of candidates) {
      expect(draw({ doorType: 'single' }, candidate).notes).toContain(candidate.device.name);
    }
  });

  test('gives the same drawing for the same facts', () => {
    fc.assert(
      fc.property(anyFacts, anyChoice, (facts, choice) => {
        expect(draw(facts, choice)).toEqual(draw(facts, choice));
      }),
      { numRuns: 50 },
    );
  });
});

describe('the elevation', () => {
  test.each(['pair', 'doubleEgressPair'] as const)('of %s has two leaves as wide as surveyed', (doorType) => {
    const leaves = leavesOf(elevation({ doorType, leafWidthIn: 34, leafHeightIn: 90 }, undefined)).map(
      boundsOf,
    );
    expect(leaves).toHaveLength(2);
    for (const leaf of leaves) {
      expect(leaf.width).toBeCloseTo(34);
      expect(leaf.height).toBeCloseTo(90);
    }
  });

  test('of a single door has one leaf, to scale', () => {
    const [leaf, ...more] = leavesOf(
      elevation({ doorType: 'single', leafWidthIn: 42, leafHeightIn: 84 }, undefined),
    ).map(boundsOf);
    expect(more).toEqual([]);
    expect(leaf?.width).toBeCloseTo(42);
    expect(leaf?.height).toBeCloseTo(84);
  });

  test('draws the hinges at the left, seen from the egress side, for a right-hand leaf', () => {
    const hingesOf = (handing: 'LH' | 'RH') => {
      const drawing = elevation({ doorType: 'single', leafWidthIn: 36, handing, hinges: 'butt' }, undefined);
      const [leaf] = leavesOf(drawing).map(boundsOf);
      const inked = drawing.primitives.filter((p) => p.kind === 'rect' && p.pen.fill === 'ink').map(boundsOf);
      if (leaf === undefined || inked.length === 0) throw new Error('No hinges were drawn.');
      return inked.every((hinge) => hinge.x + hinge.width / 2 < leaf.x + leaf.width / 2) ? 'left' : 'right';
    };
    expect(hingesOf('RH')).toBe('left');
    expect(hingesOf('LH')).toBe('right');
  });

  test('draws the sides of a leaf broken while the width is unknown, and solid once it is', () => {
    const broken = (facts: FactValues) =>
      elevation(facts, undefined).primitives.filter(
        (p) =>
          p.kind === 'line' && p.from[0] === p.to[0] && p.pen.weight === 'medium' && p.pen.dash === 'unknown',
      ).length;
    expect(broken({ doorType: 'single', leafHeightIn: 84 })).toBe(2);
    expect(broken({ doorType: 'single', leafHeightIn: 84, leafWidthIn: 36 })).toBe(0);
  });

  test('letters a hardware height nobody took as typical', () => {
    expect(wordsOf(elevation({ doorType: 'single' }, undefined))).toContain(`3'-4" typical`);
    expect(wordsOf(elevation({ doorType: 'single', egressHardwareHeightIn: 38 }, undefined))).toContain(
      `3'-2"`,
    );
  });
});

test('the plan names both sides', () => {
  expect(wordsOf(planView({}, undefined))).toEqual(expect.arrayContaining(['Secure side', 'Egress side']));
});

test.each([
  [36, `3'-0"`],
  [35.75, `2'-11 3/4"`],
  [8, `8"`],
  [0.5, `1/2"`],
  [11.99, `1'-0"`],
  [12.5, `1'-0 1/2"`],
])('%d in is lettered %s', (inches, text) => {
  expect(feetInches(inches)).toBe(text);
});

test('lines are broken between words and nothing is lost', () => {
  fc.assert(
    fc.property(
      fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1 }),
      fc.integer({ min: 12, max: 40 }),
      (words, letters) => {
        const lines = wrap(words.join(' '), letters);
        expect(lines.join(' ')).toBe(words.join(' '));
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(letters);
      },
    ),
  );
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { candidates } from '../devices/candidates.ts';
import { fitCell, fitRows } from '../fit/matrix.ts';
import { type FactKey } from '../model/fields.ts';
import { defaultWeights } from '../model/project.ts';
import { aValueOf } from '../testing/arbitraries.ts';
import { scoreAll, type ScoreFacts } from './score.ts';
import { totalsFor } from './totals.ts';

const maybe = (key: FactKey) => fc.option(aValueOf(key), { nil: undefined });
const someFacts = fc.record({
  securityNeed: maybe('securityNeed'),
  traffic: maybe('traffic'),
  appearance: maybe('appearance'),
  wishedRelease: fc.constantFrom(undefined, 'delayed', 'controlled'),
  latch: maybe('latch'),
  leafMaterial: maybe('leafMaterial'),
  frameMaterial: maybe('frameMaterial'),
  frameGrouted: maybe('frameGrouted'),
  latchProjectionIn: fc.constantFrom(undefined, 0.1, 0.25, 0.5, 0.75),
}) as fc.Arbitrary<ScoreFacts>;

test('remembered totals are those worked out anew, whichever facts and row came before', () => {
  fc.assert(
    fc.property(someFacts, fc.option(fc.constantFrom(...fitRows), { nil: undefined }), (facts, row) => {
      const anew = new Int32Array(candidates.length);
      scoreAll(facts, ({ deviceId }) => row && fitCell(row, deviceId), defaultWeights, anew);
      // One fact answered otherwise first, so that a key without it would bring back the wrong totals.
      for (const key of Object.keys(facts) as (keyof ScoreFacts)[]) {
        totalsFor({ ...facts, [key]: undefined }, row, defaultWeights);
      }
      totalsFor(facts, undefined, defaultWeights);
      expect([...totalsFor(facts, row, defaultWeights).tenths]).toEqual([...anew]);
    }),
    { numRuns: 400, seed: 22 },
  );
});

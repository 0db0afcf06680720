import { expect, test } from 'vitest';
import { chance } from '../../scripts/fuzz/chance.ts';
import { kinds, outcomeOf, sourceOf } from '../../scripts/fuzz/imports.ts';

/** A sample of what `npx tsx scripts/fuzz/imports.ts` does ten thousand times, with the same seeds. */
test.each(kinds)(
  '40 mutated files of kind %s: none throws, hangs, comes in by half or loses a row without a word',
  async (kind) => {
    const source = await sourceOf(kind);
    const whole = await outcomeOf(kind, source.whole);
    // The first one loads its reader, which takes its time once.
    expect(whole.fault?.replace(/^took.*/, '') ?? '').toBe('');
    expect(whole.refused).toBe(false);
    const faults: string[] = [];
    let refused = 0;
    for (let seed = 1; seed <= 40; seed += 1) {
      // One after the other, so that the time of each is its own.
      // oxlint-disable-next-line no-await-in-loop
      const outcome = await outcomeOf(kind, source.mutated(chance(seed)));
      if (outcome.refused) refused += 1;
      if (outcome.fault !== undefined) faults.push(`seed ${seed}: ${outcome.fault}`);
    }
    expect(faults).toEqual([]);
    // Some of them are refused and some read, or the slips would prove nothing.
    expect(refused).toBeGreaterThan(0);
    expect(refused).toBeLessThan(40);
  },
  60_000,
);

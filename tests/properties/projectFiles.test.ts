import { expect, test } from 'vitest';
import { buildProject } from '../../scripts/demo/kit.ts';
import { smallOffice } from '../../scripts/demo/smallOffice.ts';
import { chance } from '../../scripts/fuzz/chance.ts';
import { faultIn, mutated } from '../../scripts/fuzz/projectFiles.ts';
import { saveProjectText } from '../../src/domain/versions/file.ts';

test('60 mutated project files: none throws, hangs or loses a record without a word', () => {
  const whole = saveProjectText(buildProject(smallOffice));
  const faults: string[] = [];
  for (let seed = 1; seed <= 60; seed += 1) {
    const fault = faultIn(mutated(whole, chance(seed)));
    if (fault !== undefined) faults.push(`seed ${seed}: ${fault}`);
  }
  expect(faults).toEqual([]);
});

import { expect, test } from 'vitest';
import packageJson from '../../../package.json' with { type: 'json' };
import { programInWords, programVersion } from './program.ts';

test('the version kept with a verdict is that of the package, with a mark of the rules', () => {
  expect(programVersion).toBe(packageJson.version);
  expect(programInWords()).toMatch(/^\d+\.\d+\.\d+, rules [0-9a-f]{16}$/);
});

import { expect, test } from 'vitest';
import { spaceInWords, spaceUse } from './spaceUse.ts';

test('use and allowance are said, and from four fifths on what to do', () => {
  expect(spaceInWords({ usage: 400_000, quota: 2_100_000_000 })).toBe(
    'Less than 1 MB of about 2.1 GB that this browser allows are in use.',
  );
  expect(spaceInWords({ usage: 79_000_000, quota: 100_000_000 })).not.toContain('short');
  expect(spaceInWords({ usage: 80_000_000, quota: 100_000_000 })).toMatch(
    /^80 MB of about 100 MB .* running short/,
  );
});

test('a browser that does not answer is said to be silent', async () => {
  const silent = 'This browser does not say how much room is left.';
  expect(spaceInWords({ usage: 5, quota: 0 })).toBe(silent);
  expect(await spaceUse({ estimate: () => Promise.reject(new TypeError('blocked')) })).toBe(silent);
  expect(await spaceUse({ estimate: () => Promise.resolve({ usage: 2e6, quota: 4e9 }) })).toBe(
    '2 MB of about 4.0 GB that this browser allows are in use.',
  );
});

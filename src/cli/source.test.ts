import { expect, test } from 'vitest';
import { loadProject } from './source.ts';

test('a project file that another program saved in Windows-1252 is refused as such, and not read as a door list', async () => {
  const bytes = new Uint8Array(Buffer.from('{"format":"latchward-project","name":"Café"}', 'latin1'));
  expect(await loadProject(bytes)).toMatchObject({
    ok: false,
    says: expect.stringContaining('not in UTF-8'),
  });
});

import { expect, test } from 'vitest';
import { readKeyFile } from '../domain/review/keyFile.ts';
import { isLocked } from '../intake/passphrase.ts';
import { makeKeyFile, openKeyFile } from './keyFile.ts';
import { fromBase64, verifies } from './signatures.ts';

const passphrase = 'corridor lamp 42 ﬁve';
/** A test need not make guessing hard. */
const little = 8;

test('a key is sealed as a locked project file is, and signs once the passphrase has opened it', async () => {
  const file = readKeyFile(JSON.stringify(await makeKeyFile(passphrase, little)));
  if (!file) throw new Error('The file of the key cannot be read.');
  expect(isLocked(fromBase64(file.secret))).toBe(true);
  expect(JSON.stringify(file)).not.toContain('"d"');
  // The same letters as another keyboard writes them.
  const signer = await openKeyFile(file, passphrase.normalize('NFKC'));
  const verdict = { hash: 'abc', key: signer?.key, signature: await signer?.sign('abc') };
  expect(await verifies(verdict as Parameters<typeof verifies>[0])).toBe(true);
  expect(await verifies({ ...verdict, hash: 'abd' } as Parameters<typeof verifies>[0])).toBe(false);
});

test('another passphrase, a changed seal and no seal at all give no signer', async () => {
  const file = await makeKeyFile(passphrase, little);
  const changed = `${file.secret.slice(0, -8)}AAAAAAA=`;
  expect(await openKeyFile(file, 'another passphrase')).toBeUndefined();
  expect(await openKeyFile({ ...file, secret: changed }, passphrase)).toBeUndefined();
  expect(await openKeyFile({ ...file, secret: '!' }, passphrase)).toBeUndefined();
});

import { screen } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { readProjectFile } from '../../intake/container.ts';
import { SaveCopy } from './SaveCopy.tsx';

afterEach(() => {
  Reflect.deleteProperty(navigator, 'share');
  Reflect.deleteProperty(navigator, 'canShare');
});

/** A device with a sheet for sending, and what was handed to it. */
function withSheet(answer: () => Promise<void>) {
  const sent: File[] = [];
  Object.assign(navigator, {
    canShare: ({ files }: ShareData) => files?.every(({ name }) => name.endsWith('.zip')) ?? false,
    share: ({ files = [] }: ShareData) => {
      sent.push(...files);
      return answer();
    },
  });
  return sent;
}
/** The part that makes files is loaded when it is first asked for, which takes a while on a busy machine. */
const soon = { timeout: 15_000 };
const sendButton = () => screen.findByRole('button', { name: /^Send a copy/ }, soon);
const noCopyYet = 'No copy of this project was saved to a file from this browser yet.';

test('a device that sends files gets the whole project, and the copy counts as saved', async () => {
  const sent = withSheet(() => Promise.resolve());
  const { user } = show(<SaveCopy />, projectOf({ '101': { leafWidthIn: { is: 'known', value: 36 } } }));
  expect(screen.getByText(noCopyYet)).toBeVisible();
  await user.click(await sendButton());
  const read = readProjectFile(new Uint8Array((await sent[0]?.arrayBuffer()) ?? []));
  expect(read).toMatchObject({ ok: true, text: expect.stringContaining('"leafWidthIn"') });
  expect(await screen.findByText(/^Last copy saved to a file: .*Nothing has changed since/)).toBeVisible();
});

test('who changes their mind is told nothing, and nothing counts as saved; a device that fails is said', async () => {
  withSheet(() => Promise.reject(new DOMException('no', 'AbortError')));
  const { user } = show(<SaveCopy />, projectOf({}));
  await user.click(await sendButton());
  expect(screen.queryByRole('alert')).toBeNull();
  expect(screen.getByText(noCopyYet)).toBeVisible();
  withSheet(() => Promise.reject(new DOMException('not now', 'NotAllowedError')));
  await user.click(await sendButton());
  expect(await screen.findByRole('alert')).toHaveTextContent(
    /^This device did not take the file \(.*not now\)\. Save a copy and send that\.$/,
  );
});

test('where no sheet takes project files the button is not there', async () => {
  show(<SaveCopy />, projectOf({}));
  expect(await screen.findByText('This browser does not say how much room is left.')).toBeVisible();
  await vi.dynamicImportSettled();
  expect(screen.queryByRole('button', { name: /^Send a copy/ })).toBeNull();
});

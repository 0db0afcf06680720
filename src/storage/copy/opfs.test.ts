import { describe, expect, test } from 'vitest';
import { fakeFolder } from '../testing/fakeFolder.ts';
import { noteCommand } from '../testing/projects.ts';
import { createKeeper } from './keeper.ts';
import { opfsFiles } from './opfs.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const textOf = (read: Uint8Array | undefined) => read && new TextDecoder().decode(read);

describe('files of the second copy', () => {
  test('a log that was opened once takes the next line without opening it again', async () => {
    const folder = fakeFolder();
    const files = opfsFiles(folder.root);
    await files.append('a.log', bytes('one '));
    const opened = folder.calls();
    await files.append('a.log', bytes('two'));
    expect(folder.calls()).toBe(opened);
    expect(folder.onDisk('a.log')).toBe('one two');
    expect(textOf(await files.read('a.log'))).toBe('one two');
  });

  test('a log is opened once, however many lines come while it is', async () => {
    const folder = fakeFolder();
    const files = opfsFiles(folder.root);
    await Promise.all(['one ', 'two '].map((text) => files.append('a.log', bytes(text))));
    const opened = folder.calls();
    await files.append('a.log', bytes('three'));
    expect(folder.calls()).toBe(opened);
    expect(folder.onDisk('a.log')).toBe('one two three');
  });

  test('the project on the screen has its log open, with room in it, before its first line, after each new slot too', async () => {
    const folder = fakeFolder();
    const keeper = createKeeper(opfsFiles(folder.root));
    const copy = {
      revision: 1,
      tip: 't',
      id: 'p',
      name: 'House',
      at: '',
      formatVersion: 1,
      document: {},
      setAside: [],
    };
    const line = { revision: 2, after: 't', command: noteCommand('u', 'x'), takingBack: false };
    await keeper.put(copy);
    const put = folder.calls();
    await keeper.append('p', [line]);
    expect(folder.calls()).toBe(put);
    await keeper.release();
    const later = createKeeper(opfsFiles(folder.root));
    await later.openLog('p');
    const ready = folder.calls();
    await later.append('p', [line]);
    expect(folder.calls()).toBe(ready);
  });

  test.each<[string, (files: ReturnType<typeof opfsFiles>) => unknown]>([
    ['released', (files) => files.release()],
    ['written anew', (files) => files.write('a.log', bytes(''))],
    ['removed', (files) => files.remove('a.log')],
    ['left for another log', (files) => files.append('b.log', bytes('x'))],
  ])('another window can append once the log is %s', async (_how, doIt) => {
    const folder = fakeFolder();
    const here = opfsFiles(folder.root);
    await here.append('a.log', bytes('here '));
    await doIt(here);
    await opfsFiles(folder.root).append('a.log', bytes('there'));
    expect(folder.onDisk('a.log')).toMatch(/there$/);
    here.release();
  });

  test('a write that fails leaves no file open', async () => {
    const folder = fakeFolder();
    const files = opfsFiles(folder.root);
    folder.fill(true);
    await expect(files.write('a', bytes('much'))).rejects.toThrow('the disk wrote only part of it');
    folder.fill(false);
    await opfsFiles(folder.root).write('a', bytes('much'));
    expect(folder.onDisk('a')).toBe('much');
  });
});

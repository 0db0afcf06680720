import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { newProject } from '../domain/model/newProject.ts';
import { saveProjectText } from '../domain/versions/file.ts';
import { packProject, readProjectFile } from './container.ts';
import { lockZip, unlock } from './passphrase.ts';
import { filesOf } from './zip.ts';

const text = saveProjectText({ ...newProject('p', 'House'), notes: 'ü'.repeat(500) });
const head = (version: unknown) =>
  strToU8(JSON.stringify({ format: 'latchward-container', formatVersion: version }));
const zip = (files: Record<string, Uint8Array>) => zipSync(files);
const says = (bytes: Uint8Array) => {
  const read = readProjectFile(bytes);
  return read.ok ? 'opened' : read.says;
};

describe('the project as one file', () => {
  it('gives the text back, and the same bytes for the same text', () => {
    expect(readProjectFile(packProject(text))).toEqual({ ok: true, text, note: '', photos: new Map() });
    expect(packProject(text)).toEqual(packProject(text));
  });

  it('plain JSON still opens', () => {
    expect(readProjectFile(strToU8(text))).toEqual({ ok: true, text, note: '', photos: new Map() });
  });

  it('says what it holds and cannot carry on', () => {
    const read = readProjectFile(
      zip({ 'latchward.json': head(1), 'project.json': strToU8(text), 'photos/a.jpg': strToU8('x') }),
    );
    expect(read).toMatchObject({ ok: true, text, note: expect.stringContaining('photos/a.jpg') });
  });

  it.each<[string, Uint8Array, RegExp]>([
    ['a newer container', zip({ 'latchward.json': head(2), 'project.json': strToU8(text) }), /newer version/],
    [
      'a container of no version',
      zip({ 'latchward.json': head('x'), 'project.json': strToU8(text) }),
      /not a Latchward/,
    ],
    ['any other zip', zip({ 'a.txt': strToU8('a') }), /not a Latchward/],
    ['a path out of it', zip({ '../project.json': strToU8(text) }), /points outside/],
    ['a file that is cut off', packProject(text).slice(0, -30), /list of contents/],
  ])('%s is refused with a sentence', (_name, bytes, expected) => {
    expect(says(bytes)).toMatch(expected);
  });

  it('a changed byte in what is packed is noticed', () => {
    const stored = zipSync({ 'latchward.json': head(1), 'project.json': [strToU8(text), { level: 0 }] });
    const at = stored.findIndex((byte, index) => byte === 0xc3 && stored[index + 1] === 0xbc);
    stored[at + 1] = 0xa4;
    expect(says(stored)).toMatch(/checksum/);
  });

  it('an archive that unpacks to far more than it says is stopped while it unpacks', () => {
    const bomb = zipSync({ 'latchward.json': head(1), 'project.json': new Uint8Array(2_000_000) });
    const view = new DataView(bomb.buffer);
    // Both places that tell the size say ten bytes.
    for (let at = 0; at < bomb.length - 4; at += 1) {
      const signature = view.getUint32(at, true);
      if (signature === 0x02014b50) view.setUint32(at + 24, 10, true);
      if (signature === 0x04034b50) view.setUint32(at + 22, 10, true);
    }
    expect(filesOf(bomb, 1_000_000)).toMatch(/would unpack to more than/);
    expect(filesOf(bomb, 3_000_000)).toBeInstanceOf(Map);
  });
});

describe('a file with a passphrase', () => {
  it('opens with it, and tells a wrong one, a cut and a change apart', async () => {
    const file = packProject(text);
    const locked = await lockZip(file, 'four random words here', 8);
    const opened = await unlock(locked, 'four random words here');
    if (!opened.ok) throw new Error(opened.says);
    expect(readProjectFile(opened.bytes)).toEqual({ ok: true, text, note: '', photos: new Map() });

    const why = async (bytes: Uint8Array, words = 'four random words here') => {
      const read = await unlock(bytes, words);
      return read.ok ? 'opened' : read.why;
    };
    const changed = locked.slice();
    changed[changed.length - 100] = (changed[changed.length - 100] ?? 0) ^ 1;
    expect([
      await why(locked, 'four random words'),
      await why(locked.slice(0, -1)),
      await why(locked.slice(0, 400)),
      await why(locked.slice(0, 60)),
      await why(changed),
    ]).toEqual(['passphrase', 'cutOff', 'cutOff', 'cutOff', 'changed']);
  }, 60_000);
});

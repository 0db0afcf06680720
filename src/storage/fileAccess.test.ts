import { describe, expect, test, vi } from 'vitest';
import { saveProjectText } from '../domain/versions/file.ts';
import { newestFormat } from '../domain/versions/migrations.ts';
import { readProjectFile } from '../intake/container.ts';
import { downloadFile, fileOf, openFile } from './fileAccess.ts';
import { house } from './testing/projects.ts';

const today = '2026-01-05T09:00:00.000Z';

describe('saving a copy', () => {
  test('names the project and the day', () => {
    expect(fileOf(house(), today).name).toBe('House 2026-01-05.latchward.zip');
  });

  test.each([
    ['St. Mary’s / Wing “B”', 'St-Mary-s-Wing-B'],
    ['../../etc/passwd', 'etc-passwd'],
    ['Krankenhaus Süd', 'Krankenhaus-Su-d'],
    ['東棟', '東棟'],
    ['???', 'project'],
  ])('a project called %s gives a name that every disk takes', (name, expected) => {
    expect(fileOf({ ...house(), name }, today).name).toBe(`${expected} 2026-01-05.latchward.zip`);
  });

  test('is handed to the browser as a file to keep, byte for byte', async () => {
    const blobs: Blob[] = [];
    vi.stubGlobal('URL', {
      createObjectURL: (blob: Blob) => {
        blobs.push(blob);
        return 'blob:x';
      },
      revokeObjectURL: () => undefined,
    });
    const clicked: string[] = [];
    document.body.addEventListener(
      'click',
      (event) => {
        event.preventDefault();
        clicked.push((event.target as HTMLAnchorElement).download);
      },
      { once: true },
    );
    const file = fileOf(house('½ in “gap”'), today);
    downloadFile(file);
    vi.unstubAllGlobals();
    expect(clicked).toEqual([file.name]);
    expect(new Uint8Array((await blobs[0]?.arrayBuffer()) ?? [])).toEqual(file.bytes);
    expect(readProjectFile(file.bytes)).toMatchObject({ text: file.text });
    expect(document.querySelector('a')).toBeNull();
  });
});

describe('opening a file', () => {
  const from = (text: string) => openFile(new Blob([text]));

  test('gives the project and the file as it was', async () => {
    const read = await from(saveProjectText(house('x')));
    expect(read).toMatchObject({
      ok: true,
      opened: { project: house('x') },
      raw: { formatVersion: newestFormat },
    });
  });

  test('a file of a newer version is refused with a sentence', async () => {
    const read = await from('{"format":"latchward-project","formatVersion":99,"project":{}}');
    expect(read).toMatchObject({ ok: false, says: expect.stringMatching(/newer version.*untouched/) });
  });

  test('another encoding is refused instead of garbling names, UTF-16 is read', async () => {
    const text = saveProjectText({ ...house('x'), name: 'Geb\u00e4ude' });
    const old = await openFile(new Blob([Uint8Array.from(text, (sign) => sign.charCodeAt(0))]));
    expect(old).toMatchObject({ ok: false, says: expect.stringContaining('not in UTF-8') });
    const wide = await openFile(new Blob([Uint16Array.from(`\uFEFF${text}`, (sign) => sign.charCodeAt(0))]));
    expect(wide).toMatchObject({ ok: true, opened: { project: { name: 'Geb\u00e4ude' } } });
  });

  test('a file that the disk does not give up is told', async () => {
    const read = await openFile({ arrayBuffer: () => Promise.reject(new Error('stick pulled out')) });
    expect(read).toMatchObject({ ok: false, says: expect.stringContaining('stick pulled out') });
  });
});

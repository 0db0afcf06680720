import type { Files } from './keeper.ts';

/** What the standard gives to workers only; the types of a page do not know it. */
interface SyncHandle {
  readonly getSize: () => number;
  readonly read: (into: Uint8Array, options: { readonly at: number }) => number;
  readonly write: (bytes: Uint8Array, options: { readonly at: number }) => number;
  readonly truncate: (size: number) => void;
  readonly flush: () => void;
  readonly close: () => void;
}
interface FileHandle {
  readonly getFile: () => Promise<Blob>;
  readonly createSyncAccessHandle?: () => Promise<SyncHandle>;
}

const folderName = 'second-copy';

/** The private file system of this origin: another engine than the database, so what tears one leaves the other. */
export function opfsFiles(root: () => Promise<FileSystemDirectoryHandle>): Files {
  const folder = async () => (await root()).getDirectoryHandle(folderName, { create: true });
  const handleOf = async (name: string, create: boolean): Promise<FileHandle | undefined> => {
    try {
      return await (await folder()).getFileHandle(name, { create });
    } catch (error) {
      if (error instanceof DOMException && error.name === 'NotFoundError') return undefined;
      throw error;
    }
  };

  const open = async (name: string): Promise<SyncHandle> => {
    const file = await handleOf(name, true);
    if (!file?.createSyncAccessHandle) throw new Error('this browser cannot write files of its own');
    return opened(file.createSyncAccessHandle.bind(file));
  };
  /**
   * One log stays open: a line is then on the disk in the turn in which it comes. Opening costs several
   * calls to another process, in which a browser that is killed would lose the edit.
   */
  let log: { readonly name: string; readonly handle: SyncHandle } | undefined;
  const release = (name?: string) => {
    if (name !== undefined && log?.name !== name) return;
    log?.handle.close();
    log = undefined;
  };
  /** A file has one writer, so a line that comes while its log is being opened waits for the same opening. */
  let opening: { readonly name: string; readonly handle: Promise<SyncHandle> } | undefined;
  const held = (name: string): Promise<SyncHandle> => {
    if (opening?.name === name) return opening.handle;
    const handle = open(name)
      .then((opened) => {
        // Only now: until the next one is there, lines can go into the one before.
        release();
        log = { name, handle: opened };
        return opened;
      })
      .finally(() => {
        opening = undefined;
      });
    opening = { name, handle };
    return handle;
  };

  return {
    names: async () => {
      const names: string[] = [];
      const entries = (await folder()) as unknown as { readonly keys: () => AsyncIterable<string> };
      for await (const name of entries.keys()) names.push(name);
      return names;
    },
    read: async (name) => {
      if (log?.name === name) {
        const bytes = new Uint8Array(log.handle.getSize());
        log.handle.read(bytes, { at: 0 });
        return bytes;
      }
      const file = await handleOf(name, false);
      return file && new Uint8Array(await (await file.getFile()).arrayBuffer());
    },
    write: async (name, bytes) => {
      release(name);
      const handle = await open(name);
      try {
        all(handle, bytes, 0);
        handle.truncate(bytes.length);
        handle.flush();
      } finally {
        handle.close();
      }
    },
    append: async (name, bytes) => {
      const handle = log?.name === name ? log.handle : await held(name);
      all(handle, bytes, handle.getSize());
      handle.flush();
    },
    release: () => release(),
    remove: async (name) => {
      release(name);
      try {
        await (await folder()).removeEntry(name);
      } catch (error) {
        if (!(error instanceof DOMException) || error.name !== 'NotFoundError') throw error;
      }
    },
  };
}

/** A full disk may take a part only, without a word. */
function all(handle: SyncHandle, bytes: Uint8Array, at: number): void {
  if (handle.write(bytes, { at }) !== bytes.length) throw new Error('the disk wrote only part of it');
}

/** A window that was closed a moment ago may still hold the file. */
async function opened(open: () => Promise<SyncHandle>, tries = 20): Promise<SyncHandle> {
  try {
    return await open();
  } catch (error) {
    if (tries === 0 || !(error instanceof DOMException) || error.name !== 'NoModificationAllowedError') {
      throw error;
    }
    await new Promise((resolve) => {
      setTimeout(resolve, 50);
    });
    return opened(open, tries - 1);
  }
}

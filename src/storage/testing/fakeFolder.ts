/** The private file system of an origin as its standard describes it, in memory: one file has one writer at a time. */
export function fakeFolder() {
  const disk = new Map<string, Uint8Array>();
  const held = new Set<string>();
  let calls = 0;
  let full = false;
  const asked = async <T>(work: () => T): Promise<T> => {
    calls += 1;
    await Promise.resolve();
    return work();
  };
  const syncHandle = (name: string) => {
    if (held.has(name)) throw new DOMException('It is open.', 'NoModificationAllowedError');
    held.add(name);
    const now = () => disk.get(name) ?? new Uint8Array();
    let hasRoom = false;
    return {
      getSize: () => now().length,
      read: (into: Uint8Array, { at }: { readonly at: number }) => {
        into.set(now().subarray(at, at + into.length));
        return into.length;
      },
      write: (bytes: Uint8Array, { at }: { readonly at: number }) => {
        // Chromium asks the browser for room at the first write that makes a file longer, and gets more than it asks for.
        if (!hasRoom && at + bytes.length > now().length) {
          hasRoom = true;
          calls += 1;
        }
        const taken = full ? bytes.subarray(0, 1) : bytes;
        const after = new Uint8Array(Math.max(now().length, at + taken.length));
        after.set(now());
        after.set(taken, at);
        disk.set(name, after);
        return taken.length;
      },
      truncate: (size: number) => void disk.set(name, now().slice(0, size)),
      flush: () => undefined,
      close: () => void held.delete(name),
    };
  };
  const folder = {
    getFileHandle: (name: string, { create }: { readonly create: boolean }) =>
      asked(() => {
        if (!disk.has(name) && !create) throw new DOMException('It is not there.', 'NotFoundError');
        if (!disk.has(name)) disk.set(name, new Uint8Array());
        return {
          getFile: () => asked(() => new Blob([new Uint8Array(disk.get(name) ?? [])])),
          createSyncAccessHandle: () => asked(() => syncHandle(name)),
        };
      }),
    removeEntry: (name: string) =>
      asked(() => {
        if (held.has(name)) throw new DOMException('It is open.', 'NoModificationAllowedError');
        if (!disk.delete(name)) throw new DOMException('It is not there.', 'NotFoundError');
      }),
  };
  return {
    root: () => asked(() => ({ getDirectoryHandle: () => asked(() => folder) })) as never,
    /** How many calls have crossed to another process. */
    calls: () => calls,
    onDisk: (name: string) => new TextDecoder().decode(disk.get(name)),
    fill: (isFull: boolean) => {
      full = isFull;
    },
  };
}

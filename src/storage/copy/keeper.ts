import { crc32 } from '../../intake/crc32.ts';
import { type Line, lineBreak, lineToText, linesOfText } from './lines.ts';
import { type Slot, slotOfBytes, slotToBytes, type WholeCopy } from './slots.ts';

/** The files of the second copy; each call is on the disk when it resolves. */
export interface Files {
  readonly names: () => Promise<readonly string[]>;
  readonly read: (name: string) => Promise<Uint8Array | undefined>;
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
  /** The file may stay open until it is released or something else is done with it. */
  readonly append: (name: string, bytes: Uint8Array) => Promise<void>;
  readonly release: () => void;
  readonly remove: (name: string) => Promise<void>;
}

/** What the second copy holds of one project: its newest whole state and every line that may lead on. */
export interface Kept {
  readonly copy: WholeCopy | null;
  readonly lines: readonly Line[];
}

export interface Keeper {
  readonly ids: () => Promise<readonly string[]>;
  readonly look: (id: string) => Promise<Kept>;
  readonly put: (copy: WholeCopy) => Promise<void>;
  readonly append: (id: string, lines: readonly Line[]) => Promise<void>;
  /** Makes ready for the first line of a project. */
  readonly openLog: (id: string) => Promise<void>;
  /** True where lines can be appended although a slot is being written: each log leads on from both slots. */
  readonly takesLines: (id: string) => boolean;
  /** Lets go of what stays open, so that another window can write. */
  readonly release: () => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
  /** Pictures lie beside the projects, each once, under the name of their bytes. */
  readonly putPhoto: (sha256: string, bytes: Uint8Array) => Promise<void>;
  readonly photo: (sha256: string) => Promise<Uint8Array | null>;
  readonly dropPhotos: (names: readonly string[]) => Promise<void>;
}

type Side = 'a' | 'b';
const sides: readonly Side[] = ['a', 'b'];

/**
 * Two slots a project, written in turn: while one is written the other stays whole. Each slot has a log of the
 * edits since it was written, and that log is emptied only when the slot is written anew, so from either slot the
 * lines lead on to the last edit.
 */
export function createKeeper(files: Files): Keeper {
  const newest = async (id: string): Promise<{ readonly side: Side; readonly slot: Slot } | undefined> => {
    const read = await Promise.all(
      sides.map(async (side) => {
        const bytes = await files.read(slotName(id, side));
        const slot = bytes && slotOfBytes(bytes);
        return slot?.copy.id === id ? { side, slot } : undefined;
      }),
    );
    return read.filter((one) => one !== undefined).toSorted((a, b) => b.slot.turn - a.slot.turn)[0];
  };
  /** Which slot the lines of a project belong to, once known; reading both again for every line would be slow. */
  const current = new Map<string, { readonly side: Side; readonly turn: number } | null>();
  const sideNow = async (id: string) => {
    const known = current.get(id);
    if (known !== undefined) return known;
    const found = await newest(id);
    const now = found ? { side: found.side, turn: found.slot.turn } : null;
    current.set(id, now);
    return now;
  };

  /**
   * The file is opened, and its first write, for which the browser asks another process for room, is one that nobody
   * would miss: a browser that is killed in it loses no edit.
   */
  const begin = (log: string) => files.append(log, new TextEncoder().encode(lineBreak));

  return {
    ids: async () => {
      const heads = await Promise.all(
        (await files.names())
          .filter((name) => sides.some((side) => name.endsWith(`.${side}`)))
          .map(async (name) => {
            const bytes = await files.read(name);
            return bytes ? slotOfBytes(bytes)?.copy.id : undefined;
          }),
      );
      return [...new Set(heads.filter((id) => id !== undefined))];
    },

    look: async (id) => {
      const found = await newest(id);
      current.set(id, found ? { side: found.side, turn: found.slot.turn } : null);
      const logs = await Promise.all(sides.map((side) => files.read(logName(id, side))));
      const lines = logs.flatMap((bytes) => (bytes ? linesOfText(new TextDecoder().decode(bytes)) : []));
      return { copy: found?.slot.copy ?? null, lines };
    },

    put: async (copy) => {
      const now = await sideNow(copy.id);
      const side: Side = now?.side === 'a' ? 'b' : 'a';
      const turn = (now?.turn ?? 0) + 1;
      await files.write(slotName(copy.id, side), slotToBytes({ copy, turn }));
      // From here on the new slot holds, so the lines that led to what it held before may go.
      await files.write(logName(copy.id, side), new Uint8Array());
      current.set(copy.id, { side, turn });
      await begin(logName(copy.id, side));
    },

    openLog: async (id) => {
      const now = await sideNow(id);
      if (now) await begin(logName(id, now.side));
    },

    append: async (id, lines) => {
      const now = await sideNow(id);
      if (!now) throw new Error('There is no whole copy yet that these edits could follow.');
      const text = lines.map(lineToText).join('');
      await files.append(logName(id, now.side), new TextEncoder().encode(text));
    },

    takesLines: (id) => Boolean(current.get(id)),
    release: async () => files.release(),

    remove: async (id) => {
      current.delete(id);
      // Logs first: lines without their slot are nothing, a slot without its lines would be an older state.
      await Promise.all(sides.map((side) => files.remove(logName(id, side))));
      await Promise.all(sides.map((side) => files.remove(slotName(id, side))));
    },

    putPhoto: async (sha256, bytes) => {
      const there = await files.read(photoName(sha256));
      if (there?.length !== bytes.length) await files.write(photoName(sha256), bytes);
    },
    photo: async (sha256) => (await files.read(photoName(sha256))) ?? null,
    dropPhotos: async (names) => {
      await Promise.all(names.map((sha256) => files.remove(photoName(sha256))));
    },
  };
}

const photoName = (sha256: string) => `photo-${sha256}.jpg`;
const slotName = (id: string, side: Side) => `${fileName(id)}.${side}`;
const logName = (id: string, side: Side) => `${fileName(id)}.${side}.log`;

/** Ids come out of files: one may hold anything a file name may not, or differ from another by case alone. */
function fileName(id: string): string {
  const plain = id.toLowerCase().replaceAll(/[^a-z0-9-]/g, '_');
  return `project-${plain}-${crc32(new TextEncoder().encode(id))}`;
}

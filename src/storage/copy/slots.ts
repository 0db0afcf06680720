import type { SetAside } from '../../domain/model/project.ts';
import { crc32 } from '../../intake/crc32.ts';
import type { Position } from './position.ts';

/** A whole project as it lies in a slot. Read it only through domain/versions, as a stored one. */
export interface WholeCopy extends Position {
  readonly id: string;
  readonly name: string;
  readonly at: string;
  readonly formatVersion: number;
  readonly document: unknown;
  readonly setAside: readonly SetAside[];
}

export interface Slot {
  readonly copy: WholeCopy;
  /** Counts the writes: of two whole slots the later one holds. */
  readonly turn: number;
}

const marker = 'latchward-copy 1';

/** Length and checksum stand in front; a slot that was cut, or holds pieces of two writes, does not agree with them. */
export function slotToBytes({ copy, turn }: Slot): Uint8Array {
  const body = new TextEncoder().encode(JSON.stringify({ turn, copy }));
  const head = new TextEncoder().encode(`${marker} ${body.length} ${crc32(body)}\n`);
  const bytes = new Uint8Array(head.length + body.length);
  bytes.set(head);
  bytes.set(body, head.length);
  return bytes;
}

/** Undefined for anything that is not one whole write. */
export function slotOfBytes(bytes: Uint8Array): Slot | undefined {
  const end = bytes.indexOf(10);
  if (end < 0 || end > 80) return undefined;
  const [name, version, length, checksum] = new TextDecoder().decode(bytes.subarray(0, end)).split(' ');
  const body = bytes.subarray(end + 1);
  if (`${name} ${version}` !== marker || Number(length) !== body.length || checksum !== crc32(body)) {
    return undefined;
  }
  return JSON.parse(new TextDecoder().decode(body)) as Slot;
}

import type { Command } from '../../domain/commands/command.ts';
import { crc32 } from '../../intake/crc32.ts';
import type { Position } from './position.ts';

/** One accepted edit: it leads from the position before it to the one that carries its command's id. */
export interface Line {
  readonly revision: number;
  readonly command: Command;
  /** The tip before this edit. */
  readonly after: string;
  /** Undo may bring back what a new edit may not bring in. */
  readonly takingBack: boolean;
}

export const positionOf = (line: Line): Position => ({ revision: line.revision, tip: line.command.id });

/** Nothing by itself. */
export const lineBreak = '\n';

/** Begins with its line break: what is left of a torn line then spoils no other one. */
export function lineToText(line: Line): string {
  const json = JSON.stringify(line);
  return `${lineBreak}${checksum(json)} ${json}`;
}

/** The whole lines of a log, in the order written; torn ones are passed over. */
export function linesOfText(text: string): Line[] {
  return text.split(lineBreak).flatMap((one) => lineOfText(one) ?? []);
}

export function lineOfText(text: string): Line | undefined {
  const json = text.trim().slice(9);
  if (json === '' || text.trim().slice(0, 8) !== checksum(json)) return undefined;
  return JSON.parse(json) as Line;
}

/** The lines that lead on from a position, one after the other, as far as they go. */
export function linesFrom(start: Position, lines: readonly Line[]): Line[] {
  const next = new Map(lines.map((line) => [`${line.revision - 1} ${line.after}`, line]));
  const found: Line[] = [];
  let at = start;
  for (;;) {
    const line = next.get(`${at.revision} ${at.tip}`);
    if (!line) return found;
    found.push(line);
    at = positionOf(line);
  }
}

const checksum = (json: string) => crc32(new TextEncoder().encode(json));

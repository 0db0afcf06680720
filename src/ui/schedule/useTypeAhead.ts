import { useRef } from 'react';
import type { Line } from '../../domain/grid/lines.ts';

const pauseMs = 900;

/** Letters typed in quick succession find the next opening whose mark begins so; a pause begins anew. */
export function useTypeAhead(lines: readonly Line[]) {
  const last = useRef({ text: '', at: 0 });
  return (key: string, row: number): number | undefined => {
    const now = performance.now();
    const goesOn = now - last.current.at < pauseMs;
    const text = (goesOn ? last.current.text : '') + key.toLowerCase();
    last.current = { text, at: now };
    // A word that grows stays where it is as long as it fits; a new one looks further down first.
    const start = text.length > 1 ? row : row + 1;
    for (let step = 0; step < lines.length; step++) {
      const index = (start + step) % lines.length;
      const line = lines[index];
      if (line?.is === 'row' && line.row.opening.mark.toLowerCase().startsWith(text)) return index;
    }
    return undefined;
  };
}

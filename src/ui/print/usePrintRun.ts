import { useEffect, useState } from 'react';
import type { PrintPart } from '../../exporting/sheets/parts.ts';
import { sweepMemory } from './sweep.ts';

/** Long enough to press Stop between two runs of the printer. */
const pauseMs = 500;

const painted = () =>
  new Promise<void>((done) => {
    requestAnimationFrame(() => setTimeout(done));
  });

/** Letters and pictures are there; a missing one is no reason to wait for ever. */
async function isReady(): Promise<void> {
  await document.fonts?.ready;
  await Promise.all(
    [...document.querySelectorAll('img')].map((one) => one.decode?.().catch(() => undefined)),
  );
  await painted();
}

/** Some browsers come back from the printer at once, and tell later that it is done. */
function printed(): Promise<void> {
  return new Promise((done) => {
    window.addEventListener('afterprint', () => done(), { once: true });
    window.print();
  });
}

export interface PrintRun {
  /** The part that is laid out. */
  readonly at: number;
  readonly running: boolean;
  readonly show: (at: number) => void;
  readonly start: () => void;
  readonly stop: () => void;
}

/** One part after the other goes to the printer, laid out only when its turn has come. */
export function usePrintRun(parts: readonly PrintPart[]): PrintRun {
  const [chosen, setAt] = useState(0);
  const [running, setRunning] = useState(false);
  const at = Math.max(0, Math.min(chosen, parts.length - 1));
  const count = parts.length;

  // Before any print, also one the reader asks of the browser itself: the preview and its drawings left much behind.
  useEffect(() => {
    window.addEventListener('beforeprint', sweepMemory);
    return () => window.removeEventListener('beforeprint', sweepMemory);
  }, []);

  useEffect(() => {
    if (!running) return;
    let left = false;
    const go = async () => {
      await isReady();
      if (at > 0) await new Promise((done) => setTimeout(done, pauseMs));
      if (left) return;
      await printed();
      if (left) return;
      if (at + 1 < count) setAt(at + 1);
      else setRunning(false);
    };
    void go();
    return () => {
      left = true;
    };
  }, [running, at, count]);

  return {
    at,
    running,
    show: setAt,
    start: () => {
      setAt(0);
      setRunning(true);
    },
    stop: () => setRunning(false),
  };
}

import type { ReactNode } from 'react';
import type { Release } from '../../domain/devices/candidates.ts';
import type { DeviceId, FailMode } from '../../domain/devices/devices.ts';
import { deviceSymbols } from '../../exporting/drawing/device-symbols.ts';
import type { FaceSymbol } from '../../exporting/drawing/symbol.ts';
import {
  failModeSymbols,
  releaseSymbols,
  type StateWord,
  type StatusWord,
  stateSymbols,
  statusSymbols,
} from '../../exporting/drawing/word-symbols.ts';
import { SymbolDrawing } from './Symbol.tsx';

interface MarkProps {
  /** Only where the same word already stands beside it: then nothing is said twice. */
  readonly decorative?: boolean;
  readonly large?: boolean;
  /** More precise words in place of the usual one, as "Delayed 15 s". Never leave the word away. */
  readonly children?: ReactNode;
}

function Mark(props: MarkProps & { symbol: FaceSymbol; className: string }) {
  const { symbol, decorative = false, large = false, className, children } = props;
  if (decorative) return <SymbolDrawing symbol={symbol} large={large} />;
  return (
    <span className={large ? `${className} tag-large` : className}>
      <SymbolDrawing symbol={symbol} />
      <span>{children ?? symbol.word}</span>
    </span>
  );
}

/** What asks for a hand is set in the accent too; the shape and the word say it without color. */
const acts: ReadonlySet<StatusWord> = new Set<StatusWord>(['needsSignOff', 'stale']);

export function StatusMark({ status, ...rest }: MarkProps & { status: StatusWord }) {
  const className = acts.has(status) ? 'tag tag-acts' : 'tag';
  return <Mark {...rest} symbol={statusSymbols[status]} className={className} />;
}

export function StateMark({ state, ...rest }: MarkProps & { state: StateWord }) {
  return <Mark {...rest} symbol={stateSymbols[state]} className="tag" />;
}

export function DeviceSymbol({ device, ...rest }: MarkProps & { device: DeviceId }) {
  return <Mark {...rest} symbol={deviceSymbols[device]} className="tag tag-plain" />;
}

export function FailModeSymbol({ failMode, ...rest }: MarkProps & { failMode: FailMode }) {
  return <Mark {...rest} symbol={failModeSymbols[failMode]} className="tag tag-plain" />;
}

export function ReleaseSymbol({ release, ...rest }: MarkProps & { release: Release }) {
  return <Mark {...rest} symbol={releaseSymbols[release]} className="tag tag-plain" />;
}

import { deviceSymbols } from './device-symbols.ts';
import type { FaceSymbol } from './symbol.ts';
import { failModeSymbols, releaseSymbols, stateSymbols, statusSymbols } from './word-symbols.ts';

/** Everything that is drawn as a symbol, in the order of the printed legend. */
export const symbolGroups: readonly {
  readonly id: string;
  readonly title: string;
  readonly symbols: Readonly<Record<string, FaceSymbol>>;
}[] = [
  { id: 'status', title: 'Standing', symbols: statusSymbols },
  { id: 'device', title: 'Locking devices', symbols: deviceSymbols },
  { id: 'failMode', title: 'When lock power is lost', symbols: failModeSymbols },
  { id: 'release', title: 'Leaving', symbols: releaseSymbols },
  { id: 'state', title: 'What happens when', symbols: stateSymbols },
];

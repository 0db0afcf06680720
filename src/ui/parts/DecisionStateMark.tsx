import { type ShownState, shownStateWords } from '../../domain/words/states.ts';
import type { StatusWord } from '../../exporting/drawing/word-symbols.ts';
import { StatusMark } from '../face/Mark.tsx';

const symbols: Record<ShownState, StatusWord> = {
  settled: 'settled',
  open: 'provisional',
  severe: 'refused',
  refused: 'refused',
  referred: 'needsSignOff',
  none: 'nothingFits',
  left: 'leftAsItIs',
  checking: 'provisional',
  forbidden: 'refused',
};

/** The shape alone, where its word stands in the name of what it is on. */
export function StateShape({ state }: { state: ShownState }) {
  return <StatusMark status={symbols[state]} decorative />;
}

export function DecisionStateMark({ state, large = false }: { state: ShownState; large?: boolean }) {
  return (
    <StatusMark status={symbols[state]} large={large}>
      {shownStateWords[state].word}
    </StatusMark>
  );
}

import { type ShownState, shownStateWords } from '../../domain/decide/words.ts';
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

export function DecisionStateMark({ state, large = false }: { state: ShownState; large?: boolean }) {
  return (
    <StatusMark status={symbols[state]} large={large}>
      {shownStateWords[state].word}
    </StatusMark>
  );
}

import type { DecisionState } from '../../domain/decide/decision.ts';
import { stateWords } from '../../domain/decide/words.ts';
import type { StatusWord } from '../../exporting/drawing/word-symbols.ts';
import { StatusMark } from '../face/Mark.tsx';

const symbols: Record<DecisionState, StatusWord> = {
  settled: 'settled',
  open: 'provisional',
  severe: 'refused',
  refused: 'refused',
  referred: 'needsSignOff',
  none: 'nothingFits',
  left: 'leftAsItIs',
};

export function DecisionStateMark({ state, large = false }: { state: DecisionState; large?: boolean }) {
  return (
    <StatusMark status={symbols[state]} large={large}>
      {stateWords[state].word}
    </StatusMark>
  );
}

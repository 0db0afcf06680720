import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { drawingsAt, openingDrawings } from '../../exporting/drawing/kinds.ts';
import { DrawingView } from '../face/DrawingView.tsx';
import { Unfolded } from '../parts/Unfolded.tsx';

/** On request: a phone's height belongs to the questions. */
export function WalkDrawing({ decision }: { decision: Decision }) {
  return (
    <Unfolded summary="Drawing">
      <Drawn decision={decision} />
    </Unfolded>
  );
}

function Drawn({ decision }: { decision: Decision }) {
  const drawings = useMemo(() => drawingsAt(openingDrawings, decision, 'walk'), [decision]);
  return drawings.map((drawing) => <DrawingView key={drawing.title} drawing={drawing} />);
}

import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { knownValues } from '../../domain/decide/factView.ts';
import { elevation } from '../../exporting/drawing/elevation.ts';
import { drawingSizes } from '../../exporting/drawing/paper.ts';
import { DrawingView } from '../face/DrawingView.tsx';
import { Unfolded } from '../parts/Unfolded.tsx';

/** The elevation, on request: a phone's height belongs to the questions. */
export function WalkDrawing({ decision }: { decision: Decision }) {
  return (
    <Unfolded summary="Drawing">
      <Drawn decision={decision} />
    </Unfolded>
  );
}

function Drawn({ decision }: { decision: Decision }) {
  const drawing = useMemo(() => {
    const candidate = decision.chosen?.candidate;
    return elevation(knownValues(decision.slots), candidate && { ...candidate }, drawingSizes.phone);
  }, [decision]);
  return <DrawingView drawing={drawing} />;
}

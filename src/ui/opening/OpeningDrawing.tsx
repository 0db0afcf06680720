import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { drawingsAt, openingDrawings } from '../../exporting/drawing/kinds.ts';
import { DrawingView } from '../face/DrawingView.tsx';

/** The opening as it is surveyed and as it would be locked. */
export function OpeningDrawing({ decision }: { decision: Decision }) {
  const drawings = useMemo(() => drawingsAt(openingDrawings, decision, 'desk'), [decision]);
  return (
    <div className="drawings">
      {drawings.map((drawing) => (
        <DrawingView key={drawing.title} drawing={drawing} />
      ))}
    </div>
  );
}

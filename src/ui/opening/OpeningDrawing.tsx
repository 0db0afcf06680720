import { useMemo } from 'react';
import type { Decision } from '../../domain/decide/decision.ts';
import { knownValues } from '../../domain/decide/factView.ts';
import { elevation } from '../../exporting/drawing/elevation.ts';
import { planView } from '../../exporting/drawing/plan.ts';
import { DrawingView } from '../face/DrawingView.tsx';

/** The opening as it is surveyed and as it would be locked: elevation and plan. */
export function OpeningDrawing({ decision }: { decision: Decision }) {
  const drawings = useMemo(() => {
    const facts = knownValues(decision.slots);
    const candidate = decision.chosen?.candidate;
    const choice = candidate && {
      deviceId: candidate.deviceId,
      failMode: candidate.failMode,
      release: candidate.release,
    };
    return { elevation: elevation(facts, choice), plan: planView(facts, choice) };
  }, [decision]);
  return (
    <div className="drawings">
      <DrawingView drawing={drawings.elevation} />
      <DrawingView drawing={drawings.plan} />
    </div>
  );
}

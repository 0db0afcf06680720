import { useState } from 'react';
import type { Spot } from '../../domain/model/floorPlan.ts';
import { spotByKey } from '../../domain/project/floorPlans.ts';
import { shareOf } from '../photos/shareOf.ts';
import { atSpot } from './PlanPicture.tsx';

/** Lies over the whole drawing while a tap on it means something; by keyboard a cross is moved and set. */
export function TapArea({ label, onTap }: { label: string; onTap: (spot: Spot) => void }) {
  const [cross, setCross] = useState<Spot>({ x: 0.5, y: 0.5 });
  const [byKeys, setByKeys] = useState(false);
  return (
    <button
      type="button"
      className="plan-tap"
      aria-label={label}
      onClick={(event) => {
        // A press of Enter comes without a place: it sets the cross.
        if (event.detail === 0) onTap(cross);
        else onTap(shareOf(event));
      }}
      onFocus={() => setByKeys(true)}
      onBlur={() => setByKeys(false)}
      onKeyDown={(event) => {
        const moved = spotByKey(cross, event.key);
        if (!moved) return;
        event.preventDefault();
        setCross(moved);
      }}
    >
      {byKeys && <span className="plan-cross" style={atSpot(cross)} />}
    </button>
  );
}

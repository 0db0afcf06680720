import type { PlanSheet } from '../../exporting/sheets/planSheet.ts';
import { StateShape } from '../parts/DecisionStateMark.tsx';
import { atSpot, NamePin, PlanPicture } from '../plan/PlanPicture.tsx';
import '../plan/plan.css';

/** Each floor’s drawing with its openings by mark and state, as on the screen. */
export function PlanSheets({ sheet }: { sheet: PlanSheet }) {
  if (sheet.floors.length === 0) return <p>{sheet.none}</p>;
  return sheet.floors.map(({ plan, floorName, pins, says, words }) => (
    <article key={plan.id} className="plan-sheet" aria-label={floorName}>
      <h3>{floorName}</h3>
      <p>{says}</p>
      <PlanPicture plan={plan} floorName={floorName}>
        {pins.map((pin) =>
          pin.state === null ? (
            <NamePin key={pin.id} pinned={pin} />
          ) : (
            <span key={pin.id} className="plan-pin" style={atSpot(pin.spot)}>
              <StateShape state={pin.state} />
              {pin.name}
            </span>
          ),
        )}
      </PlanPicture>
      <p>{words}</p>
    </article>
  ));
}

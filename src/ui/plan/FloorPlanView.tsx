import { useState } from 'react';
import { shownState, shownStateWords } from '../../domain/decide/words.ts';
import type { FloorPlan, Spot } from '../../domain/model/floorPlan.ts';
import type { Floor, Project } from '../../domain/model/project.ts';
import {
  floorPlanWords,
  notPinned,
  pinnedAt,
  pinnedOn,
  pinsInWords,
  runsInWords,
  scaleInWords,
  withoutPlan,
} from '../../domain/project/floorPlans.ts';
import { useApp, useApplication } from '../context.ts';
import { StateShape } from '../parts/DecisionStateMark.tsx';
import { Scroller } from '../parts/Scroller.tsx';
import { useDecisions } from '../useDecisions.ts';
import { atSpot, ClosetPin, PlanPicture } from './PlanPicture.tsx';
import { ScaleForm } from './ScaleForm.tsx';
import { TapArea } from './TapArea.tsx';

interface Props {
  readonly project: Project;
  readonly floor: Floor;
  readonly plan: FloorPlan;
}

type Doing =
  | { readonly is: 'looking' }
  /** The points tapped so far. */
  | { readonly is: 'scaling'; readonly points: readonly Spot[] }
  | { readonly is: 'placing'; readonly id: string; readonly name: string };

const zooms = [100, 160, 250, 400];

/** A floor's drawing: pins lead to the walk; what is missing is placed by a tap, one after the other. */
export function FloorPlanView({ project, floor, plan }: Props) {
  const app = useApplication();
  const { dispatch, tell } = app.store.getState();
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  const { decisions, checking } = useDecisions();
  const [doing, setDoing] = useState<Doing>({ is: 'looking' });
  const [zoom, setZoom] = useState(0);
  const pinned = pinnedOn(project, plan.id);
  const left = notPinned(project, plan);
  const runs = runsInWords(project, plan);
  const place = (thing: { readonly id: string; readonly name: string } | undefined) =>
    setDoing(thing ? { is: 'placing', id: thing.id, name: thing.name } : { is: 'looking' });
  const onTap = (spot: Spot) => {
    if (doing.is === 'scaling') {
      setDoing({ ...doing, points: doing.points.length >= 2 ? [spot] : [...doing.points, spot] });
      return;
    }
    if (doing.is !== 'placing') return;
    const stamp = { at: app.clock(), by: app.preferences.get('yourName') };
    dispatch(`${doing.name}: place on the plan`, pinnedAt(project, plan, doing.id, spot, stamp));
    const wasNew = left.some(({ id }) => id === doing.id);
    place(wasNew ? left.find(({ id }) => id !== doing.id) : undefined);
  };
  return (
    <div className="stack">
      <p className="note">
        {pinsInWords(project, plan)} {scaleInWords(plan)} {runs}
      </p>
      <div className="row plan-tools">
        {!isReadOnly && (
          <>
            {left.length > 0 && (
              <label className="field">
                <span className="lettering soft">{floorPlanWords.place}</span>
                <select
                  value={doing.is === 'placing' ? doing.id : ''}
                  onChange={(event) =>
                    place([...left, ...pinned].find(({ id }) => id === event.target.value))
                  }
                >
                  <option value="">{floorPlanWords.leave}</option>
                  {left.map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                  {doing.is === 'placing' && !left.some(({ id }) => id === doing.id) && (
                    <option value={doing.id}>{doing.name}</option>
                  )}
                </select>
              </label>
            )}
            <button
              type="button"
              className="button"
              aria-pressed={doing.is === 'scaling'}
              onClick={() =>
                setDoing(doing.is === 'scaling' ? { is: 'looking' } : { is: 'scaling', points: [] })
              }
            >
              {floorPlanWords.setScale}
            </button>
          </>
        )}
        <button
          type="button"
          className="button"
          disabled={zoom === zooms.length - 1}
          onClick={() => setZoom(zoom + 1)}
        >
          {floorPlanWords.larger}
        </button>
        <button type="button" className="button" disabled={zoom === 0} onClick={() => setZoom(zoom - 1)}>
          {floorPlanWords.smaller}
        </button>
      </div>
      {doing.is === 'placing' && (
        <p role="status" className="remark">
          {floorPlanWords.placing(doing.name)}
        </p>
      )}
      {doing.is === 'scaling' && (
        <ScaleForm
          key={doing.points.map(({ x, y }) => `${x} ${y}`).join()}
          plan={plan}
          points={doing.points}
          onDone={() => setDoing({ is: 'looking' })}
        />
      )}
      <Scroller className="plan-scroller" label={floorPlanWords.picture(floor.name)}>
        <div style={{ width: `${zooms[zoom]}%` }}>
          <PlanPicture plan={plan} floorName={floor.name}>
            {pinned.map((one) => {
              const decision = decisions.get(one.id);
              if (one.is === 'closet' || !decision) return <ClosetPin key={one.id} pinned={one} />;
              const state = shownState(decision, checking);
              return (
                <a
                  key={one.id}
                  className="plan-pin"
                  style={atSpot(one.spot)}
                  href={`#/walk/${encodeURIComponent(one.id)}`}
                  aria-label={floorPlanWords.openPin(one.name, shownStateWords[state].word)}
                >
                  <StateShape state={state} />
                  {one.name}
                </a>
              );
            })}
            {doing.is === 'scaling' &&
              doing.points.map((point) => (
                <span key={`${point.x} ${point.y}`} className="plan-point" style={atSpot(point)} />
              ))}
            {doing.is !== 'looking' && (
              <TapArea
                label={doing.is === 'placing' ? floorPlanWords.placing(doing.name) : floorPlanWords.setScale}
                onTap={onTap}
              />
            )}
          </PlanPicture>
        </div>
      </Scroller>
      {left.length === 0 && pinned.length > 0 && <p className="note">{floorPlanWords.allPlaced}</p>}
      {!isReadOnly && (
        <details>
          <summary>
            {floorPlanWords.onPlan} <span className="note">{pinned.length}</span>
          </summary>
          <div className="stack">
            <ul className="plan-list">
              {pinned.map((one) => (
                <li key={one.id} className="row">
                  <span className="mark">{one.name}</span>
                  <button
                    type="button"
                    className="button button-small"
                    aria-label={floorPlanWords.move(one.name)}
                    onClick={() => place(one)}
                  >
                    Move
                  </button>
                  <button
                    type="button"
                    className="button button-remove button-small"
                    aria-label={floorPlanWords.unpin(one.name)}
                    onClick={() =>
                      dispatch(`${one.name}: off the plan`, [{ kind: 'putPin', id: one.id, value: null }])
                    }
                  >
                    Take off
                  </button>
                </li>
              ))}
            </ul>
            <button
              type="button"
              className="button button-remove self-start"
              onClick={() => {
                dispatch(`Plan of ${floor.name} removed`, withoutPlan(project, plan));
                tell({ kind: 'told', says: floorPlanWords.removed });
              }}
            >
              {floorPlanWords.other}
            </button>
          </div>
        </details>
      )}
    </div>
  );
}

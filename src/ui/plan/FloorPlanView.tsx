import { useMemo, useState } from 'react';
import { linkTo } from '../../app/addresses.ts';
import { shownState, shownStateWords } from '../../domain/words/states.ts';
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
} from '../../domain/project/floorPlans.ts';
import { sidesOnPlan } from '../../domain/project/sidesByPlan.ts';
import { surveyWords } from '../../domain/survey/words.ts';
import { useApp, useApplication } from '../context.ts';
import { SideChoices } from '../opening/SidesByPlan.tsx';
import { StateShape } from '../parts/DecisionStateMark.tsx';
import { Scroller } from '../parts/Scroller.tsx';
import { useDecisions } from '../useDecisions.ts';
import { PlanList } from './PlanList.tsx';
import { atSpot, NamePin, PlanPicture } from './PlanPicture.tsx';
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

/** The pin of the opening somebody comes from may be outside of what is shown of a large drawing. */
const intoView = (pin: HTMLElement | null) => pin?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });

/** A floor's drawing: pins lead to the walk; what is missing is placed by a tap, one after the other. */
export function FloorPlanView({ project, floor, plan }: Props) {
  const app = useApplication();
  const { dispatch } = app.store.getState();
  /** The opening somebody comes from: shown apart, and offered to be placed where it is not on the plan. */
  const selectedId = useApp((state) => state.session.selectedId);
  const isReadOnly = useApp(({ saving }) => saving.kind === 'readOnly');
  const { decisions, checking } = useDecisions();
  const [doing, setDoing] = useState<Doing>({ is: 'looking' });
  const [zoom, setZoom] = useState(0);
  const pinned = pinnedOn(project, plan.id);
  const left = notPinned(project, plan);
  const runs = runsInWords(project, plan);
  const sides = useMemo(() => sidesOnPlan(project, plan), [project, plan]);
  const toPlace = doing.is === 'looking' ? left.find(({ id }) => id === selectedId) : undefined;
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
            {(left.length > 0 || doing.is === 'placing') && (
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
      {toPlace && !isReadOnly && (
        <p className="remark row">
          <span>{floorPlanWords.notYet(toPlace.name)}</span>
          <button type="button" className="button" onClick={() => place(toPlace)}>
            {floorPlanWords.placeNow(toPlace.name)}
          </button>
        </p>
      )}
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
              if (one.is !== 'opening' || !decision) return <NamePin key={one.id} pinned={one} />;
              const state = shownState(decision, checking);
              return (
                <a
                  key={one.id}
                  ref={one.id === selectedId ? intoView : undefined}
                  aria-current={one.id === selectedId ? 'location' : undefined}
                  className="plan-pin"
                  style={atSpot(one.spot)}
                  href={linkTo('walk', one.id)}
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
      {sides.length > 0 && (
        <section className="stack stack-tight" aria-label={floorPlanWords.sides}>
          <h2 className="lead">{floorPlanWords.sides}</h2>
          {sides.map(({ opening, sides: one }) => (
            <div key={opening.id} className="stack stack-tight">
              <p>
                <span className="mark">{opening.mark}</span> {one.says}
              </p>
              <SideChoices opening={opening} sides={one} />
            </div>
          ))}
          <p className="note">{surveyWords.whichSide}</p>
        </section>
      )}
      <PlanList project={project} floor={floor} plan={plan} pinned={pinned} onMove={place} />
    </div>
  );
}

import { linkTo } from '../../app/addresses.ts';
import { useState } from 'react';
import { buildingFindingsFor, buildingFor } from '../../app/buildings.ts';
import { rememberLast } from '../../app/rememberLast.ts';
import type { BuildingFinding } from '../../domain/building/finding.ts';
import type { Plan } from '../../domain/building/plan.ts';
import { buildingInNumbers } from '../../domain/building/sentences.ts';
import type { Project } from '../../domain/model/project.ts';
import { condition, type ConditionId } from '../../domain/simulate/conditions.ts';
import { useApp } from '../context.ts';
import { ErrorPanel } from '../parts/ErrorPanel.tsx';
import { ConditionSwitch } from './ConditionSwitch.tsx';
import { Drawings } from './Drawings.tsx';
import { FindingList } from './FindingList.tsx';
import { type FloorGraph, floorGraphs } from './floors.ts';
import { LoadsAndExits } from './LoadsAndExits.tsx';
import { OpeningFindings } from './OpeningFindings.tsx';
import './building.css';

const floorsOf = rememberLast(floorGraphs);
/** Above this many openings one floor is drawn at a time. */
const allFloorsUpTo = 300;

export default function BuildingPage() {
  const project = useApp((state) => state.document.project);
  return Object.keys(project.spaces).length === 0 ? <NoSpaces /> : <Building project={project} />;
}

function NoSpaces() {
  return (
    <div className="sheet">
      <div className="sheet-body empty stack">
        <h1>The building as a whole</h1>
        <p>
          No spaces have been entered yet. Add them under <a href={linkTo('project')}>Project</a> and say at
          each opening which two it joins.
        </p>
      </div>
    </div>
  );
}

function Building({ project }: { project: Project }) {
  const answer = buildingFor(project);
  const findings = buildingFindingsFor(project);
  const { plan } = answer;
  const floors = floorsOf(plan);
  const [at, setAt] = useState<ConditionId>('lockedHours');
  const [floorId, setFloorId] = useState(
    plan.edges.length <= allFloorsUpTo ? 'all' : (floors[0]?.id ?? 'all'),
  );
  const [chosenText, setChosenText] = useState<string>();
  const chosen = findings.find((one) => keyOf(one) === chosenText);
  const state = answer.states.get(at);
  const marked = new Set([
    ...(chosen?.path ?? []),
    ...(chosen?.openingIds ?? []),
    ...(chosen?.spaceId ? [chosen.spaceId] : []),
  ]);
  const choose = (finding: BuildingFinding) => {
    const same = keyOf(finding) === chosenText;
    setChosenText(same ? undefined : keyOf(finding));
    const [first] = finding.conditions;
    if (!same && first !== undefined && !finding.conditions.includes(at)) setAt(first);
    if (!same) requestAnimationFrame(showMarked);
    if (!same && floorId !== 'all') setFloorId(floorOf(plan, floors, finding) ?? floorId);
  };
  if (!state) return null;
  return (
    <div className="sheet sheet-full">
      <div className="sheet-body stack">
        <div className="row row-baseline">
          <h1>The building as a whole</h1>
          <p className="note">{buildingInNumbers(project, findings)}</p>
        </div>
        <ConditionSwitch at={at} onChange={setAt} findings={findings} />
        <p className="note">{condition(at).means}</p>
        <div className="building-columns">
          <section aria-labelledby="building-findings">
            <h2 id="building-findings">What was found</h2>
            <FindingList plan={plan} findings={findings} chosen={chosen} onChoose={choose} />
            <OpeningFindings plan={plan} />
          </section>
          <section aria-labelledby="building-drawing" className="building-drawing">
            <div className="row row-baseline">
              <h2 id="building-drawing">Spaces and openings</h2>
              <select
                className="input"
                aria-label="Floor to draw"
                value={floorId}
                onChange={(event) => setFloorId(event.target.value)}
              >
                <option value="all">Every floor</option>
                {floors.map((floor) => (
                  <option key={floor.id} value={floor.id}>
                    {floor.name}
                  </option>
                ))}
              </select>
            </div>
            <Drawings
              plan={plan}
              floors={floors.filter((floor) => floorId === 'all' || floor.id === floorId)}
              state={state}
              condition={at}
              marked={marked}
            />
          </section>
        </div>
        <ErrorPanel name="Loads and exits">
          <LoadsAndExits project={project} />
        </ErrorPanel>
      </div>
    </div>
  );
}

/** The first thing the chosen finding speaks of comes into view, also inside a wide floor. */
function showMarked() {
  const first =
    document.querySelector('.floor-space.floor-marked') ?? document.querySelector('.floor-marked');
  first?.scrollIntoView({ block: 'center', inline: 'center' });
}

function keyOf(finding: BuildingFinding): string {
  return `${finding.kind} ${finding.says}`;
}

function floorOf(plan: Plan, floors: readonly FloorGraph[], finding: BuildingFinding): string | undefined {
  const [id] = finding.openingIds;
  const index = plan.edges.findIndex((edge) => edge.opening.id === id);
  return floors.find((floor) => floor.edges.includes(index))?.id;
}

import { linkTo } from '../../app/addresses.ts';
import type { BuildingState } from '../../domain/building/building.ts';
import { kindInWords, levelInWords } from '../../domain/building/sentences.ts';
import type { Plan } from '../../domain/building/plan.ts';
import { peopleIn } from '../../domain/egress/spaceLoad.ts';
import { compareMarks } from '../../domain/model/project.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import { StateMark } from '../face/Mark.tsx';
import { ExitMark } from '../opening/ConditionTable.tsx';
import type { FloorGraph } from './floors.ts';
import { isExposed, outcomeOf, wayOutInWords } from './stateWords.ts';

interface Props {
  readonly plan: Plan;
  readonly state: BuildingState;
  readonly condition: ConditionId;
  readonly floor: FloorGraph;
}

/** The drawing in words: the same openings and spaces, readable without it. */
export function FloorTables({ plan, state, condition, floor }: Props) {
  const edges = floor.edges
    .flatMap((index) => plan.edges[index] ?? [])
    .toSorted((a, b) => compareMarks(a.opening.mark, b.opening.mark));
  return (
    <details>
      <summary>
        {floor.name} as tables ({edges.length} openings, {floor.spaces.length} spaces)
      </summary>
      <table className="schedule schedule-close schedule-folds">
        <caption>Openings</caption>
        <thead>
          <tr>
            <th scope="col">Mark</th>
            <th scope="col">Secure side</th>
            <th scope="col">Egress side</th>
            <th scope="col">Entry</th>
            <th scope="col">Exit</th>
          </tr>
        </thead>
        <tbody>
          {edges.map((edge) => {
            const outcome = outcomeOf(edge, condition);
            return (
              <tr key={edge.opening.id}>
                <th scope="row" data-head="Mark">
                  <a className="mark" href={linkTo('opening', edge.opening.id)}>
                    {edge.opening.mark}
                  </a>
                </th>
                <td data-head="Secure side">{plan.spaces[edge.from]?.name ?? 'Not stated'}</td>
                <td data-head="Egress side">{plan.spaces[edge.to]?.name ?? 'Not stated'}</td>
                <td data-head="Entry">
                  {outcome && outcome.entry !== 'none' ? (
                    <StateMark state={outcome.entry} />
                  ) : (
                    'Nothing decided'
                  )}
                </td>
                <td data-head="Exit">{outcome ? <ExitMark outcome={outcome} /> : 'Nothing decided'}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <table className="schedule schedule-close schedule-folds">
        <caption>Spaces</caption>
        <thead>
          <tr>
            <th scope="col">Space</th>
            <th scope="col">Kind</th>
            <th scope="col">Level</th>
            <th scope="col" className="num">
              People
            </th>
            <th scope="col">Egress</th>
            <th scope="col">Without a credential</th>
          </tr>
        </thead>
        <tbody>
          {floor.spaces.map((index) => {
            const space = plan.spaces[index];
            if (!space) return null;
            return (
              <tr key={space.id}>
                <th scope="row" data-head="Space">
                  {space.name}
                </th>
                <td data-head="Kind">{kindInWords(space)}</td>
                <td data-head="Level">{levelInWords(space.securityLevel)}</td>
                <td data-head="People" className="num">
                  {peopleIn(space, plan.project.basis) ?? '?'}
                </td>
                <td data-head="Egress">{wayOutInWords(plan, state, index)}</td>
                <td data-head="Without a credential">
                  {isExposed(plan, state, index)
                    ? 'Open to anyone'
                    : state.reached.reached[index]
                      ? 'Reached'
                      : 'Not reached'}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </details>
  );
}

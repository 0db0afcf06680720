import { linkTo } from '../../app/addresses.ts';
import type { BuildingState } from '../../domain/building/building.ts';
import { levelInWords } from '../../domain/building/sentences.ts';
import type { Plan } from '../../domain/building/plan.ts';
import type { ConditionId } from '../../domain/simulate/conditions.ts';
import { symbolDash, symbolWidths } from '../../exporting/drawing/symbol.ts';
import { type StateWord, stateSymbols } from '../../exporting/drawing/word-symbols.ts';
import { Scroller } from '../parts/Scroller.tsx';
import { lineHeight, type PlacedEdge, type PlacedFloor, type PlacedSpace } from './layout.ts';
import { isExposed, outcomeOf, symbolOf, wayOutInWords } from './stateWords.ts';

interface Props {
  readonly plan: Plan;
  readonly state: BuildingState;
  readonly condition: ConditionId;
  readonly placed: PlacedFloor;
  /** Ids of openings and of the space that the chosen finding speaks of. */
  readonly marked: ReadonlySet<string>;
}

/** One floor as a sheet of boxes and doors. Every opening is a link; the tables beside it say the same in words. */
export function FloorDrawing({ plan, state, condition, placed, marked }: Props) {
  const { floor, width, height } = placed;
  const margin = 8;
  return (
    <Scroller className="floor-scroll" label={`Drawing of ${floor.name}`}>
      <svg
        role="group"
        className="floor-drawing"
        width={width + 2 * margin}
        height={height + 2 * margin}
        viewBox={`${-margin} ${-margin} ${width + 2 * margin} ${height + 2 * margin}`}
        aria-label={`${floor.name}: spaces and the openings between them`}
      >
        {placed.edges.map((edge) => (
          <EdgeLine key={edge.index} {...{ plan, condition, edge, marked }} />
        ))}
        {placed.spaces.map((space) => (
          <SpaceBox key={space.index} {...{ plan, state, space, marked }} />
        ))}
        {placed.edges.map((edge) => (
          <EdgeMark key={edge.index} {...{ plan, condition, edge, marked }} />
        ))}
      </svg>
    </Scroller>
  );
}

function SpaceBox(props: {
  plan: Plan;
  state: BuildingState;
  space: PlacedSpace;
  marked: ReadonlySet<string>;
}) {
  const { plan, state, space, marked } = props;
  const found = plan.spaces[space.index];
  if (!found) return null;
  const out = wayOutInWords(plan, state, space.index);
  const shut = out === 'No egress';
  const open = isExposed(plan, state, space.index);
  const classes = [
    'floor-space',
    found.kind === 'outside' ? 'floor-outside' : '',
    shut ? 'floor-shut' : '',
    marked.has(found.id) ? 'floor-marked' : '',
  ];
  const middle = space.x + space.width / 2;
  const below = space.y + 8 + space.lines.length * lineHeight;
  return (
    <g className={classes.filter(Boolean).join(' ')}>
      <rect x={space.x} y={space.y} width={space.width} height={space.height} />
      {open && (
        <rect
          className="floor-exposed"
          x={space.x + 4}
          y={space.y + 4}
          width={space.width - 8}
          height={space.height - 8}
        />
      )}
      {space.lines.map((line, at) => (
        <text key={line} x={middle} y={space.y + 18 + at * lineHeight} className="floor-name">
          {line}
        </text>
      ))}
      <text x={middle} y={below + lineHeight - 6} className="floor-level">
        {levelInWords(found.securityLevel)}
      </text>
      <text x={middle} y={below + 2 * lineHeight - 6} className={shut || open ? 'floor-name' : 'floor-level'}>
        {shut ? out : open ? 'Open to anyone' : out}
      </text>
    </g>
  );
}

interface EdgeProps {
  readonly plan: Plan;
  readonly condition: ConditionId;
  readonly edge: PlacedEdge;
  readonly marked: ReadonlySet<string>;
}

function EdgeLine({ plan, condition, edge, marked }: EdgeProps) {
  const found = plan.edges[edge.index];
  if (!found) return null;
  const outcome = outcomeOf(found, condition);
  const classes = [
    'floor-edge',
    outcome === undefined ? 'floor-unknown' : '',
    outcome?.exit === 'blocked' ? 'floor-blocked' : '',
    marked.has(found.opening.id) ? 'floor-marked' : '',
  ];
  return <path className={classes.filter(Boolean).join(' ')} d={edge.path} />;
}

function EdgeMark({ plan, condition, edge, marked }: EdgeProps) {
  const found = plan.edges[edge.index];
  if (!found) return null;
  const outcome = outcomeOf(found, condition);
  const { x, y, width, height } = edge.label;
  const [from, to] = [plan.spaces[found.from]?.name, plan.spaces[found.to]?.name];
  const word = outcome ? stateSymbols[symbolOf(outcome)].word.toLowerCase() : 'nothing decided';
  return (
    <a
      href={linkTo('opening', found.opening.id)}
      className={marked.has(found.opening.id) ? 'floor-mark floor-marked' : 'floor-mark'}
      aria-label={`${found.opening.mark}, ${from} and ${to}: ${word}`}
    >
      <title>{`${found.opening.mark}: ${outcome?.says ?? 'nothing is decided here.'}`}</title>
      <rect x={x} y={y} width={width} height={height} />
      {outcome && <SmallSymbol state={symbolOf(outcome)} x={x + 4} y={y + 3} />}
      <text x={x + 26} y={y + height / 2 + 5}>
        {found.opening.mark}
      </text>
    </a>
  );
}

/** A state symbol inside a drawing, 18 px. */
function SmallSymbol({ state, x, y }: { state: StateWord; x: number; y: number }) {
  return (
    <g className="floor-symbol" transform={`translate(${x} ${y}) scale(0.75)`} aria-hidden="true">
      {stateSymbols[state].strokes.map((stroke) => (
        <path
          key={stroke.d}
          d={stroke.d}
          {...(stroke.solid
            ? { className: 'floor-solid' }
            : {
                strokeWidth: symbolWidths[stroke.weight ?? 'usual'],
                ...(stroke.dashed && { strokeDasharray: symbolDash }),
              })}
        />
      ))}
    </g>
  );
}

import { type ReactNode, useId } from 'react';
import { hatchLines } from '../../exporting/drawing/hatch.ts';
import {
  arcPoint,
  type Drawing,
  type Pen,
  type Point,
  type Primitive,
} from '../../exporting/drawing/scene.ts';

interface DrawingViewProps {
  readonly drawing: Drawing;
  /** Set under the drawing, usually the mark of the opening. */
  readonly caption?: ReactNode;
}

/** Paints a drawing as it was composed. Nothing is decided here; weights and inks come from drawing.css. */
export function DrawingView({ drawing, caption }: DrawingViewProps) {
  const id = useId();
  const unit = drawing.frame.width / drawing.paper.width;
  return (
    <figure className={drawing.labels === 'none' ? 'drawing drawing-thumb' : 'drawing'}>
      <svg
        role="img"
        // The name says what is drawn, not only of which kind the drawing is.
        aria-labelledby={`${id}-title ${id}-desc`}
        viewBox={`0 0 ${drawing.frame.width} ${drawing.frame.height}`}
        style={{ '--unit': unit, '--paper-width': drawing.paper.width } as React.CSSProperties}
      >
        <title id={`${id}-title`}>{drawing.title}</title>
        <desc id={`${id}-desc`}>{drawing.description}</desc>
        {drawing.primitives.map((primitive, i) => (
          // Primitives have no identity of their own; a drawing is painted anew as a whole.
          // oxlint-disable-next-line react/no-array-index-key
          <Stroke key={i} primitive={primitive} unit={unit} />
        ))}
      </svg>
      {drawing.labels === 'numbers' && drawing.notes.length > 0 && (
        <ol className="drawing-notes">
          {drawing.notes.map((note, i) => (
            // oxlint-disable-next-line react/no-array-index-key
            <li key={i}>{note}</li>
          ))}
        </ol>
      )}
      {caption !== undefined && <figcaption>{caption}</figcaption>}
    </figure>
  );
}

const dashes = { unknown: [0.07, 0.045], hidden: [0.028, 0.028] } as const;

function look(pen: Pen, unit: number) {
  const fill = pen.fill === undefined ? '' : ` fill-${pen.fill}`;
  const dash =
    pen.dash === undefined
      ? {}
      : { strokeDasharray: dashes[pen.dash].map((part) => round(part * unit)).join(' ') };
  return { className: `pen-${pen.weight}${fill}${pen.chosen ? ' pen-chosen' : ''}`, ...dash };
}

const round = (value: number): number => Math.round(value * 1000) / 1000;
const list = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');

function Stroke({ primitive, unit }: { primitive: Primitive; unit: number }) {
  switch (primitive.kind) {
    case 'line': {
      const { from, to, pen } = primitive;
      return (
        <line
          x1={round(from[0])}
          y1={round(from[1])}
          x2={round(to[0])}
          y2={round(to[1])}
          {...look(pen, unit)}
        />
      );
    }
    case 'polyline': {
      const points = list(primitive.points);
      return primitive.closed ? (
        <polygon points={points} {...look(primitive.pen, unit)} />
      ) : (
        <polyline points={points} {...look(primitive.pen, unit)} />
      );
    }
    case 'rect': {
      const { x, y, width, height } = primitive.box;
      return (
        <rect
          x={round(x)}
          y={round(y)}
          width={round(width)}
          height={round(height)}
          {...look(primitive.pen, unit)}
        />
      );
    }
    case 'circle':
      return (
        <circle
          cx={round(primitive.center[0])}
          cy={round(primitive.center[1])}
          r={round(primitive.radius)}
          {...look(primitive.pen, unit)}
        />
      );
    case 'arc': {
      const { center, radius, start, end, pen } = primitive;
      const [from, to] = [arcPoint(center, radius, start), arcPoint(center, radius, end)].map((point) =>
        list([point]),
      );
      const large = Math.abs(end - start) > 180 ? 1 : 0;
      return (
        <path
          d={`M${from}A${round(radius)} ${round(radius)} 0 ${large} ${end > start ? 1 : 0} ${to}`}
          {...look(pen, unit)}
        />
      );
    }
    case 'hatch': {
      const strokes = hatchLines(primitive.box, primitive.pattern, primitive.spacing);
      return (
        <path
          d={strokes.map(([from, to]) => `M${list([from])}L${list([to])}`).join('')}
          className="pen-hatch"
        />
      );
    }
    case 'text': {
      const [x, y] = primitive.at.map(round) as [number, number];
      return (
        <text
          x={x}
          y={y}
          fontSize={round(primitive.size)}
          textAnchor={primitive.anchor}
          {...(primitive.upright ? { transform: `rotate(-90 ${x} ${y})` } : {})}
          className={primitive.strong ? 'drawn-text drawn-text-strong' : 'drawn-text'}
        >
          {primitive.text}
        </text>
      );
    }
  }
}

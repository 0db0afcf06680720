import type { CSSProperties } from 'react';
import type { Drawing } from '../../exporting/drawing/scene.ts';
import { DrawingView } from '../face/DrawingView.tsx';

/** To scale, so each keeps its own width in inches; the key to its numbers stands beside it. */
export function Drawn({ drawings }: { drawings: readonly Drawing[] }) {
  return drawings.map((drawing) => (
    <div
      key={drawing.title}
      className="drawn"
      style={{ '--drawn-width': `${drawing.paper.width}in` } as CSSProperties}
    >
      <DrawingView drawing={drawing} />
    </div>
  ));
}

import type { Drawing } from '../../exporting/drawing/scene.ts';
import { DrawingView } from '../face/DrawingView.tsx';

/** To scale, so each keeps its own width in inches. */
export function Drawn({ drawings }: { drawings: readonly Drawing[] }) {
  return drawings.map((drawing) => (
    <div key={drawing.title} style={{ width: `${drawing.paper.width}in` }}>
      <DrawingView drawing={drawing} />
    </div>
  ));
}

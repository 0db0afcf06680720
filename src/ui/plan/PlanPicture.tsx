import type { CSSProperties, ReactNode } from 'react';
import type { FloorPlan, Spot } from '../../domain/model/floorPlan.ts';
import type { Pinned } from '../../domain/project/floorPlans.ts';
import { floorPlanWords } from '../../domain/project/floorPlans.ts';
import { photoWords } from '../../domain/survey/photos.ts';
import { usePicture } from '../photos/usePicture.ts';

interface Props {
  readonly plan: FloorPlan;
  readonly floorName: string;
  readonly children?: ReactNode;
}

/** A drawing as wide as there is room, with whatever lies on it at shares of its width and height. */
export function PlanPicture({ plan, floorName, children }: Props) {
  const shown = usePicture(plan.sha256);
  const { widthPx, heightPx } = plan;
  if (shown.is !== 'here') {
    return (
      <p className="photo-missing note" role="status">
        {shown.is === 'gone' ? floorPlanWords.gone : photoWords.loading}
      </p>
    );
  }
  return (
    <div className="plan-picture" style={ratioOf(plan)}>
      <img
        src={shown.address}
        alt={floorPlanWords.picture(floorName)}
        width={widthPx}
        height={heightPx}
        decoding="sync"
      />
      {children}
    </div>
  );
}

/** Paper limits the height, so the width has to know the shape. */
const ratioOf = ({ widthPx, heightPx }: FloorPlan) =>
  ({ aspectRatio: `${widthPx} / ${heightPx}`, '--plan-ratio': widthPx / heightPx }) as CSSProperties;

/** Puts what it holds at a spot of the drawing. */
export const atSpot = ({ x, y }: Spot) => ({
  insetInlineStart: `${x * 100}%`,
  insetBlockStart: `${y * 100}%`,
});

/** A closet or a space has no state: its name in a box. */
export function NamePin({ pinned: { is, name, spot } }: { pinned: Pinned }) {
  return (
    <span className={`plan-pin plan-${is}`} style={atSpot(spot)}>
      {is !== 'opening' && <span className="visually-hidden">{floorPlanWords[is]} </span>}
      {name}
    </span>
  );
}

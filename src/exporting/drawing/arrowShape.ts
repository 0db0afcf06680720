import type { Ends } from '../../domain/survey/photos.ts';

/** An arrow over a picture, in the picture's own pixels. */
export interface ArrowShape {
  readonly from: { readonly x: number; readonly y: number };
  /** Where the shaft ends: inside the head, so that its blunt end never shows past the tip. */
  readonly to: { readonly x: number; readonly y: number };
  /** Corners of the head, tip first, as SVG writes them. */
  readonly head: string;
  readonly widthPx: number;
  /** Drawn under it in white, so that it shows on a dark leaf as well as on a white frame. */
  readonly haloPx: number;
}

/** As thick on a small picture as on a large one, once both are shown at one size. */
const shareOfWidth = 0.009;
const headLengths = 4.5;
const headHalfWidths = 2;

export function arrowShape(ends: Ends, widthPx: number, heightPx: number): ArrowShape {
  const stroke = Math.max(widthPx, heightPx) * shareOfWidth;
  const [fromX, fromY] = [ends.fromX * widthPx, ends.fromY * heightPx];
  const [tipX, tipY] = [ends.toX * widthPx, ends.toY * heightPx];
  const length = Math.hypot(tipX - fromX, tipY - fromY);
  // Without a length it has no direction; it then points up.
  const [alongX, alongY] = length === 0 ? [0, -1] : [(tipX - fromX) / length, (tipY - fromY) / length];
  const back = stroke * headLengths;
  const [baseX, baseY] = [tipX - alongX * back, tipY - alongY * back];
  const side = stroke * headHalfWidths;
  const corners = [
    [tipX, tipY],
    [baseX - alongY * side, baseY + alongX * side],
    [baseX + alongY * side, baseY - alongX * side],
  ];
  return {
    from: { x: fromX, y: fromY },
    to: length > back ? { x: baseX, y: baseY } : { x: fromX, y: fromY },
    head: corners.map(([x = 0, y = 0]) => `${round(x)},${round(y)}`).join(' '),
    widthPx: stroke,
    haloPx: stroke * 0.7,
  };
}

const round = (value: number) => Math.round(value * 10) / 10;

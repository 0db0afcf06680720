import { wireShare } from '../../domain/power/drop.ts';
import { exactVolts, feet, percent } from '../../domain/power/figures.ts';
import type { FedOpening } from '../../domain/power/powerPlan.ts';
import { wrap } from './lettering.ts';
import { letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import { centered, pens, Sketch } from './sketch.ts';

const left = 0.62;
const edge = 0.1;
const plot = 1.9;

interface Point {
  readonly mark: string;
  readonly lengthFt: number;
  readonly share: number;
  readonly dropV: number;
  readonly fits: boolean;
}

/**
 * Drop against length: a mark for each lock run at the gauge its cable gets, in percent of its rated volts, and the
 * limits as level lines. A run that no usual cable carries is an open mark. Undefined where no run is known.
 */
export function dropChart(openings: readonly FedOpening[], paperWidth: number): Drawing | undefined {
  const points = openings.flatMap(({ demand, lengthFt, sizing }): readonly Point[] =>
    sizing && lengthFt !== null && demand.volts !== null
      ? [
          {
            mark: demand.mark,
            lengthFt,
            share: sizing.at.dropV / demand.volts,
            dropV: sizing.at.dropV,
            fits: sizing.gauge !== null,
          },
        ]
      : [],
  );
  if (points.length === 0) return undefined;
  const sketch = new Sketch(1);
  const longest = Math.max(50, Math.ceil(Math.max(...points.map(({ lengthFt }) => lengthFt)) / 50) * 50);
  const most = Math.max(0.12, ...points.map(({ share }) => share));
  const [top, bottom, right] = [0.3, 0.3 + plot, paperWidth - 0.3];
  const x = (lengthFt: number) => left + (lengthFt / longest) * (right - left);
  const y = (share: number) => bottom - (share / most) * plot;
  sketch.line([left, top - 0.05], [left, bottom], pens.medium);
  sketch.line([left, bottom], [right, bottom], pens.medium);
  for (const share of [wireShare, 0.1]) {
    sketch.line([left, y(share)], [right, y(share)], share === wireShare ? pens.heavy : pens.unknown);
    sketch.text([left - 0.08, y(share) + letterHeight * 0.35], percent(share), letterHeight, {
      anchor: 'end',
    });
  }
  sketch.text([left - 0.08, bottom + letterHeight * 0.35], '0', letterHeight, { anchor: 'end' });
  for (const part of [0.5, 1]) {
    const at = x(longest * part);
    sketch.line([at, bottom], [at, bottom + 0.06], pens.thin);
    sketch.text([at, bottom + 0.06 + letterHeight], feet(longest * part), letterHeight, {
      anchor: part === 1 ? 'end' : 'middle',
    });
  }
  for (const { lengthFt, share, fits } of points) {
    const mark = centered(x(lengthFt), y(share), 0.07, 0.07);
    sketch.rect(mark, fits ? { weight: 'thin', fill: 'ink' } : { weight: 'medium', fill: 'paper' });
  }
  const last = points.reduce((a, b) => (b.lengthFt > a.lengthFt ? b : a));
  const worst = points.reduce((a, b) => (b.share > a.share ? b : a));
  const fits = Math.floor((paperWidth - 2 * edge) / textWidth('x', letterHeight));
  let line = bottom + 0.06 + letterHeight + 0.1;
  sketch.line([edge, line], [paperWidth - edge, line], pens.thin);
  line += 0.06;
  const words = [
    ['Voltage drop against length', true],
    [
      `Longest run: ${last.mark}, ${feet(last.lengthFt)}. Largest drop: ${worst.mark}, ${exactVolts(worst.dropV)}, ${percent(worst.share)}.`,
      false,
    ],
    [
      `Heavy line: ${percent(wireShare)} for the wire under steady current; broken line: 10 %, the window of the lock. Open mark: no usual cable.`,
      false,
    ],
  ] as const;
  for (const [text, strong] of words)
    for (const one of wrap(text, fits)) {
      sketch.text([edge, line + letterHeight * 0.85], one, letterHeight, { strong });
      line += lineHeight;
    }
  return {
    frame: { width: paperWidth, height: line + 0.06 },
    paper: { width: paperWidth, height: line + 0.06 },
    title: 'Voltage drop against length',
    description: points
      .map((one) => `${one.mark}: ${feet(one.lengthFt)}, ${exactVolts(one.dropV)}, ${percent(one.share)}.`)
      .join(' '),
    notes: [],
    labels: 'words',
    notSurveyed: [],
    primitives: sketch.primitives,
  };
}

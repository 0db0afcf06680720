import { amps } from '../../domain/power/figures.ts';
import type { SupplyState } from '../../domain/power/supplyState.ts';
import { wrap } from './lettering.ts';
import { letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import { pens, Sketch } from './sketch.ts';

const edge = 0.1;
const bar = 0.16;
const outputBox = 0.09;

/**
 * Load against capacity, a bar for each supply as long as its rating: filled what stands all day, hatched what is
 * released, a tall stroke at 80 %, a short one at the peak. Under it a box for each output, filled where used.
 */
export function loadChart(title: string, supplies: readonly SupplyState[], paperWidth: number): Drawing {
  const sketch = new Sketch(1);
  const span = paperWidth - 2 * edge;
  const largest = Math.max(
    ...supplies.map(({ supply, continuousA, peakA }) =>
      Math.max(supply.amps, continuousA, Math.min(peakA, 2 * supply.amps)),
    ),
  );
  const at = (current: number) => edge + (Math.min(current, largest) / largest) * span;
  const fits = Math.floor(span / textWidth('x', letterHeight));
  let y = 0.06;
  for (const state of supplies) {
    const { supply, standingA, continuousA, usableA, peakA, outputsUsed } = state;
    const head = `${supply.name}: ${amps(continuousA)} of ${amps(usableA)}, rated ${amps(supply.amps)}`;
    sketch.text([edge, y + letterHeight * 0.85], cut(head, fits), letterHeight, { strong: true });
    y += lineHeight + 0.06;
    sketch.rect({ x: edge, y, width: at(supply.amps) - edge, height: bar }, pens.medium);
    sketch.rect({ x: edge, y, width: at(standingA) - edge, height: bar }, { weight: 'thin', fill: 'ink' });
    sketch.hatch({ x: at(standingA), y, width: at(continuousA) - at(standingA), height: bar }, 'metal', 0.06);
    sketch.rect({ x: at(standingA), y, width: at(continuousA) - at(standingA), height: bar }, pens.thin);
    sketch.line([at(usableA), y - 0.05], [at(usableA), y + bar + 0.05], pens.heavy);
    if (peakA > continuousA + 1e-9 && peakA <= largest)
      sketch.line([at(peakA), y + bar * 0.25], [at(peakA), y + bar * 0.75], pens.heavy);
    y += bar + 0.1;
    const step = Math.min(outputBox * 1.4, span / Math.max(supply.outputs, outputsUsed));
    for (let output = 0; output < Math.max(supply.outputs, outputsUsed); output++)
      sketch.rect(
        { x: edge + output * step, y, width: step * 0.7, height: outputBox },
        output >= supply.outputs
          ? pens.unknown
          : output < outputsUsed
            ? { weight: 'thin', fill: 'ink' }
            : pens.thin,
      );
    y += outputBox + 0.16;
  }
  sketch.line([edge, y], [paperWidth - edge, y], pens.thin);
  y += 0.06;
  for (const [index, line] of [
    ...wrap(title, fits),
    ...wrap(
      'Filled: all day. Hatched: released. Tall stroke: 80 % of the rating. Short stroke: with the largest start. Boxes: outputs, filled in use.',
      fits,
    ),
  ].entries()) {
    sketch.text([edge, y + letterHeight * 0.85], line, letterHeight, { strong: index === 0 });
    y += lineHeight;
  }
  return {
    frame: { width: paperWidth, height: y + 0.06 },
    paper: { width: paperWidth, height: y + 0.06 },
    title,
    description: supplies
      .map(
        ({ supply, standingA, continuousA, usableA, outputsUsed, peakA }) =>
          `${supply.name}: ${amps(standingA)} all day and ${amps(continuousA)} with all released, of ${amps(usableA)} usable and ${amps(supply.amps)} rated; peak ${amps(peakA)}; ${outputsUsed} of ${supply.outputs} outputs.`,
      )
      .join(' '),
    notes: [],
    labels: 'words',
    notSurveyed: [],
    primitives: sketch.primitives,
  };
}

/** A name without an end would push everything else off the sheet. */
export function cut(text: string, letters: number): string {
  return text.length <= letters ? text : `${text.slice(0, Math.max(1, letters - 1))}…`;
}

import type { OneLine, Station } from '../../domain/schedules/oneLine.ts';
import { startSentence } from '../../domain/text/midSentence.ts';
import { wrap } from './lettering.ts';
import { letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import { centered, pens, Sketch } from './sketch.ts';

/** Inches of paper: where the wires run, from the middle of the sheet, and what is kept free around words. */
const bus = -0.22;
const wire = 0.32;
const clear = 0.16;
const edge = 0.1;
const gap = 0.09;
const head = 0.36;

interface Row {
  readonly lines: readonly string[];
  readonly height: number;
}

/**
 * The wires of an opening, one line each: right, the lock circuit from its supply down to the lock; left, what reports
 * to the controller. Not to scale: a line is a connection, its length is none. Reduced, all of it is set that much
 * smaller on the paper, lettering too.
 */
export function oneLine(of: OneLine, paperWidth: number, reduced = 1): Drawing {
  const width = paperWidth / reduced;
  const sketch = new Sketch(1);
  const middle = width / 2;
  const column = middle - Math.max(-bus, wire) - clear - edge - 0.1;
  const fits = Math.floor(column / textWidth('x', letterHeight));
  const row = (text: string): Row => {
    const lines = wrap(text, fits);
    return { lines, height: lines.length * lineHeight + gap };
  };
  const stations = of.circuit.map((one) => row(`${one.name}: ${one.says}`));
  const signals = of.signals.map((one) => row(`${one.name}: ${one.carries}`));
  const heightOf = (rows: readonly Row[]) => rows.reduce((sum, { height }) => sum + height, 0);
  const tall = Math.max(heightOf(stations), heightOf(signals));
  const end = head + tall;

  heading(sketch, middle + bus - clear, 'To the controller', 'end');
  heading(sketch, middle + wire + clear, 'Lock circuit', 'start');
  drawSignals(sketch, signals, middle + bus, end);
  drawCircuit(sketch, of, stations, { x: middle + wire, bus: middle + bus });

  const foot = captionOf(of, Math.floor((width - 2 * edge) / textWidth('x', letterHeight)));
  sketch.line([edge, end + 0.06], [width - edge, end + 0.06], pens.thin);
  foot.forEach((line, i) =>
    sketch.text([edge, end + 0.04 + (i + 1) * lineHeight], line, letterHeight, { strong: i === 0 }),
  );
  const height = end + 0.12 + foot.length * lineHeight;
  return {
    frame: { width, height },
    paper: { width: paperWidth, height: height * reduced },
    title: 'One-line diagram',
    description: told(of),
    notes: [],
    labels: 'words',
    notSurveyed: of.notSurveyed,
    primitives: sketch.primitives,
  };
}

function heading(sketch: Sketch, x: number, text: string, anchor: 'start' | 'end'): void {
  sketch.text([x, 0.24], text, letterHeight, { anchor, strong: true });
}

/** Each reporting device is a box at its words, and its wire ends at the controller, a bar from top to foot. */
function drawSignals(sketch: Sketch, rows: readonly Row[], x: number, end: number): void {
  sketch.line([x, head - 0.06], [x, end - gap / 2], pens.cut);
  let y = head;
  for (const { lines, height } of rows) {
    const level = y + lineHeight / 2;
    sketch.line([x, level], [x - clear, level], pens.thin);
    sketch.rect(centered(x - clear, level, 0.1, 0.1), pens.onPaper);
    words(sketch, lines, x - clear - 0.12, y, 'end');
    y += height;
  }
}

function drawCircuit(
  sketch: Sketch,
  { circuit }: OneLine,
  rows: readonly Row[],
  { x, bus: controller }: { readonly x: number; readonly bus: number },
): void {
  let y = head;
  let from: number | undefined;
  circuit.forEach((station, index) => {
    const row = rows[index];
    if (!row) return;
    const level = y + lineHeight / 2;
    const [upper, lower] = symbol(sketch, station, x, level, controller);
    if (from !== undefined) sketch.line([x, from], [x, upper], pens.medium);
    from = lower;
    words(sketch, row.lines, x + clear, y, 'start');
    y += row.height;
  });
}

/** Draws what stands in the wire, and says where the wire ends above it and goes on below. */
function symbol(
  sketch: Sketch,
  { id, contact }: Station,
  x: number,
  y: number,
  controller: number,
): readonly [upper: number, lower: number] {
  if (contact) {
    // Worked by the controller, as the hidden line says.
    if (id === 'relay') sketch.line([controller, y], [x - 0.09, y], pens.hidden);
    return drawContact(sketch, x, y, contact === 'closed');
  }
  if (id === 'hinges') {
    sketch.arc([x, y], 0.07, -90, 90, pens.medium);
    return [y - 0.07, y + 0.07];
  }
  if (id === 'frame') {
    // A cable that goes on: nothing interrupts it.
    sketch.line([x - 0.05, y + 0.05], [x + 0.05, y - 0.05], pens.thin);
    return [y, y];
  }
  sketch.rect(centered(x, y, 0.18, 0.16), id === 'lock' ? pens.chosen : { weight: 'heavy', fill: 'paper' });
  return [y - 0.08, y + 0.08];
}

/** As in any ladder diagram: two bars, and a stroke across them where the contact is closed at rest. */
function drawContact(sketch: Sketch, x: number, y: number, closed: boolean): readonly [number, number] {
  for (const at of [y - 0.035, y + 0.035]) sketch.line([x - 0.08, at], [x + 0.08, at], pens.medium);
  if (closed) sketch.line([x - 0.08, y + 0.08], [x + 0.08, y - 0.08], pens.thin);
  return [y - 0.035, y + 0.035];
}

function words(
  sketch: Sketch,
  lines: readonly string[],
  x: number,
  y: number,
  anchor: 'start' | 'end',
): void {
  lines.forEach((line, i) =>
    sketch.text([x, y + letterHeight * 0.85 + i * lineHeight], line, letterHeight, { anchor }),
  );
}

function captionOf(of: OneLine, fits: number): readonly string[] {
  return [
    ...wrap('One-line diagram, not to scale', fits),
    ...wrap(`On fire alarm: ${of.onFireAlarm}`, fits),
    ...wrap(
      'Heavy bar: the controller. Contacts at rest, door locked: two bars open, with a stroke closed. Terminals and wire sizes are not shown.',
      fits,
    ),
    ...(of.notSurveyed.length > 0 ? wrap(`? Not surveyed: ${of.notSurveyed.join(', ')}`, fits) : []),
  ];
}

function told({ circuit, signals, onFireAlarm, notSurveyed }: OneLine): string {
  const missing = notSurveyed.length > 0 ? ` Not surveyed: ${notSurveyed.join(', ')}.` : '';
  const chain = circuit.map(({ name, says }) => `${name} (${says})`).join('; then ');
  const reports = signals.map(({ name, carries }) => `${name} (${carries})`).join('; ');
  const told = reports === '' ? 'Nothing reports to the controller.' : `To the controller: ${reports}.`;
  return `${startSentence(chain)}. ${told} On fire alarm: ${onFireAlarm}.${missing}`;
}

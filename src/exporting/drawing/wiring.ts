import type { PointToPoint } from '../../domain/schedules/pointToPoint.ts';
import { wrap } from './lettering.ts';
import { letterHeight, lineHeight } from './paper.ts';
import { type Drawing, textWidth } from './scene.ts';
import { pens, Sketch } from './sketch.ts';

const edge = 0.1;
const gap = 0.12;

/**
 * Terminals of closet and door joined conductor by conductor, a row each; conductors of one cable stand together under
 * its name. Not to scale. An arc on a conductor is the transfer at the hinges.
 */
export function wiring(of: PointToPoint, paperWidth: number, reduced = 1): Drawing {
  const width = paperWidth / reduced;
  const sketch = new Sketch(1);
  const column = Math.floor((width / 2 - 0.75 - edge) / textWidth('x', letterHeight));
  const [left, right] = [width / 2 - 0.55, width / 2 + 0.55];
  const whole = Math.floor((width - 2 * edge) / textWidth('x', letterHeight));
  let y = 0.06;
  const write = (text: string, strong = false) => {
    for (const line of wrap(text, whole)) {
      sketch.text([edge, y + letterHeight * 0.85], line, letterHeight, { strong });
      y += lineHeight;
    }
  };
  for (const { name, wires } of of.groups) {
    write(name, true);
    for (const { from, to, hinge } of wires) {
      const [starts, ends] = [wrap(from, column), wrap(to, column)];
      const level = y + lineHeight / 2;
      starts.forEach((line, i) =>
        sketch.text([left - 0.14, y + letterHeight * 0.85 + i * lineHeight], line, letterHeight, {
          anchor: 'end',
        }),
      );
      ends.forEach((line, i) =>
        sketch.text([right + 0.14, y + letterHeight * 0.85 + i * lineHeight], line, letterHeight),
      );
      sketch.line([left, level], [right, level], pens.thin);
      for (const x of [left, right]) sketch.circle([x, level], 0.035, pens.onPaper);
      if (hinge) sketch.arc([width / 2, level], 0.06, -180, 0, pens.medium);
      y += Math.max(starts.length, ends.length) * lineHeight;
    }
    y += gap;
  }
  sketch.line([edge, y], [width - edge, y], pens.thin);
  y += 0.06;
  write('Point-to-point wiring, not to scale', true);
  write(`On fire alarm: ${of.onFireAlarm}`);
  write(
    'C common, NC closed at rest, NO open at rest; door locked. Arc: transfer at the hinges. Match terminals to the maker’s.',
  );
  if (of.notSurveyed.length > 0) write(`? Not surveyed: ${of.notSurveyed.join(', ')}`);
  const height = y + 0.08;
  return {
    frame: { width, height },
    paper: { width: paperWidth, height: height * reduced },
    title: 'Point-to-point wiring',
    description: told(of),
    notes: [],
    labels: 'words',
    notSurveyed: of.notSurveyed,
    primitives: sketch.primitives,
  };
}

function told({ groups, onFireAlarm }: PointToPoint): string {
  const said = groups.map(
    ({ name, wires }) => `${name}: ${wires.map(({ from, to }) => `${from} to ${to}`).join(', ')}.`,
  );
  return `${said.join(' ')} On fire alarm: ${onFireAlarm}.`;
}

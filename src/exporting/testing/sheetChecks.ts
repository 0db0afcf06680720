import { type Box, boundsOf, type Drawing, type Primitive, textBox } from '../drawing/scene.ts';

type Text = Extract<Primitive, { kind: 'text' }>;
export const textsOf = (drawing: Drawing): Text[] =>
  drawing.primitives.filter((p): p is Text => p.kind === 'text');
export const wordsOf = (drawing: Drawing): string[] => textsOf(drawing).map(({ text }) => text);

function outside(drawing: Drawing): Primitive[] {
  const { width, height } = drawing.frame;
  const slack = 0.01;
  return drawing.primitives.filter((primitive) => {
    const box = boundsOf(primitive);
    const inside =
      box.x >= -slack &&
      box.y >= -slack &&
      box.x + box.width <= width + slack &&
      box.y + box.height <= height + slack;
    return !inside;
  });
}

export const meet = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

function touching(drawing: Drawing): [string, string][] {
  const texts = textsOf(drawing);
  return texts.flatMap((one, i) =>
    texts
      .slice(i + 1)
      .filter((other) => meet(textBox(one), textBox(other)))
      .map((other): [string, string] => [one.text, other.text]),
  );
}

/** What leaves the sheet, texts that touch, and coordinates that are no number; nothing where a drawing is in order. */
export function sheetProblems(drawing: Drawing): readonly unknown[] {
  const numbers = drawing.primitives.flatMap((p) => Object.values(boundsOf(p)));
  return [...outside(drawing), ...touching(drawing), ...numbers.filter((one) => !Number.isFinite(one))];
}

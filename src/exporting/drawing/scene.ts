/**
 * A drawing as data: strokes in real inches inside a frame, origin at the upper left, y downward. The screen,
 * the print and the tests read the same list, so what a person sees is what was tested.
 */
export type Weight = 'hair' | 'thin' | 'medium' | 'heavy' | 'cut';

export interface Pen {
  readonly weight: Weight;
  /** `unknown`: nobody surveyed it. `hidden`: it is on the other side, inside, or overhead. */
  readonly dash?: 'unknown' | 'hidden';
  /** The electrified part this opening was given. Also told by its filling and its label. */
  readonly chosen?: true;
  readonly fill?: 'paper' | 'ink';
}

export type Point = readonly [x: number, y: number];

export type Primitive =
  | { readonly kind: 'line'; readonly from: Point; readonly to: Point; readonly pen: Pen }
  | {
      readonly kind: 'polyline';
      readonly points: readonly Point[];
      readonly closed: boolean;
      readonly pen: Pen;
    }
  | { readonly kind: 'rect'; readonly box: Box; readonly pen: Pen; readonly part?: Part }
  /** Degrees, clockwise from three o'clock, as on screen. */
  | {
      readonly kind: 'arc';
      readonly center: Point;
      readonly radius: number;
      readonly start: number;
      readonly end: number;
      readonly pen: Pen;
    }
  | { readonly kind: 'circle'; readonly center: Point; readonly radius: number; readonly pen: Pen }
  | {
      readonly kind: 'hatch';
      readonly box: Box;
      readonly pattern: HatchPattern;
      readonly spacing: number;
      readonly pen: Pen;
    }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly size: number;
      readonly anchor: 'start' | 'middle' | 'end';
      readonly upright: boolean;
      readonly strong: boolean;
    };

/** Named where a test or a screen has to find it again. */
export type Part = 'leaf' | 'frame' | 'lock';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type HatchPattern =
  | 'metal'
  | 'aluminium'
  | 'wood'
  | 'mineral'
  | 'glass'
  | 'masonry'
  | 'mesh'
  | 'pickets'
  | 'slats'
  | 'lattice'
  | 'studs';

export interface Drawing {
  readonly frame: { readonly width: number; readonly height: number };
  /** Size on paper, inches; frame divided by paper is the scale. */
  readonly paper: { readonly width: number; readonly height: number };
  /** As lettered under the drawing, `1/2" = 1'-0"`; absent on a thumbnail, which keeps no scale. */
  readonly scale?: string;
  readonly title: string;
  /** The drawing told in words, for who does not see it. */
  readonly description: string;
  /** Every label, in the order of its number; shown as a list where labels are drawn as numbers. */
  readonly notes: readonly string[];
  readonly labels: 'words' | 'numbers' | 'none';
  /** What was drawn by habit because nobody surveyed it, as field labels. */
  readonly notSurveyed: readonly string[];
  readonly primitives: readonly Primitive[];
}

/** Condensed letters, on the wide side, so that an estimate never lets two texts touch. */
const letterWidth = 0.43;
export function textWidth(text: string, size: number): number {
  return text.length * size * letterWidth;
}

export function textBox(text: Extract<Primitive, { kind: 'text' }>): Box {
  const length = textWidth(text.text, text.size);
  const back = text.anchor === 'start' ? 0 : text.anchor === 'middle' ? length / 2 : length;
  const [x, y] = text.at;
  const rise = text.size * 0.78;
  const height = text.size;
  // Upright text is turned a quarter to the left: it is read from the right-hand edge of the sheet.
  return text.upright
    ? { x: x - rise, y: y - length + back, width: height, height: length }
    : { x: x - back, y: y - rise, width: length, height };
}

const boxOf = (points: readonly Point[]): Box => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
};

export function arcPoint(center: Point, radius: number, degrees: number): Point {
  const turn = (degrees * Math.PI) / 180;
  return [center[0] + radius * Math.cos(turn), center[1] + radius * Math.sin(turn)];
}

/** The smallest box around a primitive, line weight not counted. */
export function boundsOf(primitive: Primitive): Box {
  switch (primitive.kind) {
    case 'line':
      return boxOf([primitive.from, primitive.to]);
    case 'polyline':
      return boxOf(primitive.points);
    case 'rect':
    case 'hatch':
      return primitive.box;
    case 'circle': {
      const { center, radius } = primitive;
      return { x: center[0] - radius, y: center[1] - radius, width: 2 * radius, height: 2 * radius };
    }
    case 'arc': {
      const { center, radius, start, end } = primitive;
      const steps = Array.from({ length: 25 }, (_, i) => start + ((end - start) * i) / 24);
      return boxOf(steps.map((degrees) => arcPoint(center, radius, degrees)));
    }
    case 'text':
      return textBox(primitive);
  }
}

/** The same primitive, so many inches higher on the sheet. */
export function raised(primitive: Primitive, by: number): Primitive {
  const up = ([x, y]: Point): Point => [x, y - by];
  switch (primitive.kind) {
    case 'line':
      return { ...primitive, from: up(primitive.from), to: up(primitive.to) };
    case 'polyline':
      return { ...primitive, points: primitive.points.map(up) };
    case 'rect':
    case 'hatch':
      return { ...primitive, box: { ...primitive.box, y: primitive.box.y - by } };
    case 'circle':
    case 'arc':
      return { ...primitive, center: up(primitive.center) };
    case 'text':
      return { ...primitive, at: up(primitive.at) };
  }
}

/** Letters stand on their point and rise about three quarters of their size. */
const capHeight = 0.75;

/** Whether a low frame cuts off nothing that is written: labels are stacked, so many need height. */
export function wordsAreInside({ frame, primitives }: Drawing): boolean {
  return primitives.every(
    (one) => one.kind !== 'text' || (one.at[1] >= one.size * capHeight && one.at[1] <= frame.height),
  );
}

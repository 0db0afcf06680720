import type { Box, HatchPattern, Point } from './scene.ts';

export type Segment = readonly [Point, Point];

/** The strokes of a hatch, cut to its box. Painters only draw lines; the patterns are decided here. */
export function hatchLines(box: Box, pattern: HatchPattern, spacing: number): readonly Segment[] {
  const { x, y, width, height } = box;
  switch (pattern) {
    // Metals: diagonals; aluminum in pairs.
    case 'metal':
      return diagonals(box, spacing * 2.2, 1);
    case 'aluminium':
      return diagonals(box, spacing * 2.2, 1).concat(diagonals(box, spacing * 2.2, 1, spacing * 0.45));
    // Wood: grain along the height, unevenly set; a mineral core adds short cross strokes.
    case 'wood':
      return grain(box, spacing);
    case 'mineral':
      return grain(box, spacing * 1.5).concat(dashesAcross(box, spacing * 2));
    // Glass: two glints, never a full hatch, so that it still reads as clear.
    case 'glass':
      return glints(box);
    case 'masonry':
      return coursing(box, spacing * 2);
    case 'mesh':
      return diagonals(box, spacing * 1.1, 1).concat(diagonals(box, spacing * 1.1, -1));
    case 'pickets':
      return steps(width, spacing * 1.4).map(
        (at): Segment => [
          [x + at, y],
          [x + at, y + height],
        ],
      );
    case 'slats':
      return steps(height, spacing).map(
        (at): Segment => [
          [x, y + at],
          [x + width, y + at],
        ],
      );
    case 'lattice':
      return hatchLines(box, 'slats', spacing * 1.2).concat(hatchLines(box, 'pickets', spacing * 2.4));
    case 'studs':
      return steps(width, spacing * 5).flatMap((at): Segment[] => [
        [
          [x + at, y],
          [x + at, y + height],
        ],
        [
          [x + at, y],
          [x + Math.min(width, at + height), y + Math.min(height, width - at)],
        ],
      ]);
  }
}

/** Offsets strictly inside a length, evenly set, not nearer to either end than half a step. */
function steps(length: number, wanted: number): number[] {
  const count = Math.max(1, Math.round(length / wanted));
  return Array.from({ length: count - 1 }, (_, i) => ((i + 1) * length) / count);
}

function diagonals({ x, y, width, height }: Box, step: number, slope: 1 | -1, shift = 0): Segment[] {
  const found: Segment[] = [];
  // Lines u + v = d in the box's own coordinates; a falling slope mirrors u.
  for (let d = step / 2 + shift; d < width + height; d += step) {
    const from: Point = [Math.max(0, d - height), Math.min(height, d)];
    const to: Point = [Math.min(width, d), Math.max(0, d - width)];
    const place = ([u, v]: Point): Point => [slope === 1 ? x + u : x + width - u, y + v];
    found.push([place(from), place(to)]);
  }
  return found;
}

function grain({ x, y, width, height }: Box, spacing: number): Segment[] {
  // A short repeating rhythm looks drawn by hand and stays the same on every print.
  const rhythm = [1, 0.45, 1.3, 0.6, 0.9];
  const starts = [0, 0.12, 0, 0.3, 0.05];
  const found: Segment[] = [];
  let at = spacing * 0.7;
  for (let i = 0; at < width; i += 1) {
    const gap = (starts[i % starts.length] ?? 0) * height;
    found.push([
      [x + at, y + gap],
      [x + at, y + height - gap / 2],
    ]);
    at += spacing * (rhythm[i % rhythm.length] ?? 1);
  }
  return found;
}

function dashesAcross({ x, y, width, height }: Box, spacing: number): Segment[] {
  return steps(height, spacing).flatMap((down, row) =>
    steps(width, spacing).map((along): Segment => {
      const left = Math.min(width, Math.max(0, along + (row % 2 === 0 ? -0.4 : 0.1) * spacing));
      return [
        [x + left, y + down],
        [x + Math.min(width, left + spacing * 0.3), y + down],
      ];
    }),
  );
}

function glints({ x, y, width, height }: Box): Segment[] {
  const size = Math.min(width, height) * 0.5;
  const [left, top] = [x + width * 0.2, y + height * 0.28];
  return [
    [
      [left, top + size * 0.6],
      [left + size * 0.6, top],
    ],
    [
      [left + size * 0.05, top + size],
      [left + size, top + size * 0.05],
    ],
  ];
}

function coursing(box: Box, course: number): Segment[] {
  const { x, y, width, height } = box;
  const rows = steps(height, course).map(
    (at): Segment => [
      [x, y + at],
      [x + width, y + at],
    ],
  );
  return rows.concat(bricks(box, course, course * 2));
}

/** Upright joints, each row shifted by half. */
function bricks({ x, y, width, height }: Box, course: number, length: number): Segment[] {
  const edges = [0, ...steps(height, course), height];
  return edges.slice(1).flatMap((bottom, row) => {
    const top = edges[row] ?? 0;
    const found: Segment[] = [];
    for (let at = row % 2 === 0 ? length / 2 : length; at < width; at += length)
      found.push([
        [x + at, y + top],
        [x + at, y + bottom],
      ]);
    return found;
  });
}

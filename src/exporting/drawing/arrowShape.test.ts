import { expect, test } from 'vitest';
import { arrowShape } from './arrowShape.ts';

test('an arrow points at its end, from its tail, on a picture of any shape', () => {
  const shape = arrowShape({ fromX: 0.25, fromY: 0.5, toX: 0.75, toY: 0.5 }, 1000, 500);
  expect(shape.from).toEqual({ x: 250, y: 250 });
  expect(shape.head).toBe('750,250 709.5,268 709.5,232');
  expect(shape.to).toEqual({ x: 709.5, y: 250 });
});

test('without a length it is a head alone, and nothing of it is not a number', () => {
  const shape = arrowShape({ fromX: 0.5, fromY: 0.5, toX: 0.5, toY: 0.5 }, 100, 200);
  expect(shape.head).toMatch(/^50,100( -?[\d.]+,-?[\d.]+){2}$/);
  expect(shape.to).toEqual(shape.from);
});

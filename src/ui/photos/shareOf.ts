import type { MouseEvent } from 'react';

/** Where on an element the finger is, as shares of its width and height. */
export function shareOf({ currentTarget, clientX, clientY }: MouseEvent<HTMLElement>): {
  readonly x: number;
  readonly y: number;
} {
  const { left, top, width, height } = currentTarget.getBoundingClientRect();
  return { x: (clientX - left) / (width || 1), y: (clientY - top) / (height || 1) };
}

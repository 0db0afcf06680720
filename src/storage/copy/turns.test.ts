import { expect, test } from 'vitest';
import type { Keeper } from './keeper.ts';
import { inTurns } from './turns.ts';

/** A keeper whose calls end only when they are let go, and which notes in which order they begin. */
function slowKeeper(takesLines: boolean) {
  const begun: string[] = [];
  const ends: (() => void)[] = [];
  const slow = (name: string) => () => {
    begun.push(name);
    return new Promise<void>((resolve) => {
      ends.push(resolve);
    });
  };
  const keeper = { put: slow('put'), append: slow('append'), takesLines: () => takesLines };
  return { begun, endNext: () => ends.shift()?.(), turns: inTurns(keeper as unknown as Keeper) };
}
const settle = () =>
  new Promise((resolve) => {
    setTimeout(resolve, 0);
  });

test('a line does not wait for a slot that is being written', async () => {
  const { begun, turns } = slowKeeper(true);
  void turns('put', [{ id: 'p' }]);
  await settle();
  void turns('append', ['p', []]);
  await settle();
  expect(begun).toEqual(['put', 'append']);
});

test('the first line of a project waits for the slot it follows', async () => {
  const { begun, endNext, turns } = slowKeeper(false);
  void turns('put', [{ id: 'p' }]);
  void turns('append', ['p', []]);
  await settle();
  expect(begun).toEqual(['put']);
  endNext();
  await settle();
  expect(begun).toEqual(['put', 'append']);
});

test('a slot waits for the lines before it, and one that fails holds up nothing', async () => {
  const { begun, endNext, turns } = slowKeeper(true);
  void turns('append', ['p', []]);
  void turns('put', [{ id: 'p' }]);
  await settle();
  expect(begun).toEqual(['append']);
  endNext();
  await settle();
  expect(begun).toEqual(['append', 'put']);
  const failing = inTurns({ look: () => Promise.reject(new Error('torn')), takesLines: () => true } as never);
  await expect(failing('look', ['p'])).rejects.toThrow('torn');
  await expect(failing('look', ['p'])).rejects.toThrow('torn');
});

import { expect, test } from 'vitest';
import type { Demand, Load } from './demand.ts';
import { poeStateOf } from './poe.ts';

const load = (of: Load['of'], steadyA: number, peakA = steadyA): Load => ({
  of,
  name: of,
  count: 1,
  when: 'standing',
  rating: { name: of, steadyA, peakA } as Load['rating'],
});
const fed = (loads: readonly Load[], peakExtraA = 0, change: Partial<Demand> = {}) =>
  poeStateOf({ volts: 12, source: 'poe', loads, peakExtraA, ...change } as Demand);

test('what a network-fed controller has left decides the port: 3 W of 15.4, 9 W of 30 (IEEE 802.3af and at)', () => {
  // At 12 V 3 W are 0.25 A and 9 W are 0.75 A.
  expect(fed([load('magnet', 0.25)])).toMatchObject({ port: 'af', neededA: 0.25 });
  expect(fed([load('magnet', 0.26)])?.port).toBe('at');
  expect(fed([load('magnet', 0.25), load('reader', 0.1)])?.port).toBe('at');
  expect(fed([load('magnet', 0.76)])?.port).toBeNull();
});

test('the start of the lock counts with all that stands, the controller itself does not', () => {
  expect(fed([load('magnet', 0.2)], 0.3)).toMatchObject({ port: 'at', neededA: 0.5 });
  expect(fed([load('magnet', 0.2)], 0.7)?.port).toBeNull();
  expect(fed([load('controller', 5), load('magnet', 0.2)])?.port).toBe('af');
});

test('where nothing is fed from the network, or the voltage is not known, there is nothing to say', () => {
  expect(fed([], 0, { source: 'supply' })).toBeUndefined();
  expect(fed([], 0, { volts: null })).toBeUndefined();
});

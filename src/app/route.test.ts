import { expect, test } from 'vitest';
import { addressOf, routeOf } from './route.ts';

test('an address of an earlier version leads where the page is now', () => {
  expect(routeOf('#/bill')).toEqual({ page: 'pricing', openingId: null });
  expect(addressOf(routeOf('#/bill'))).toBe('#/pricing');
  expect(routeOf('#/toString')).toEqual({ page: 'schedule', openingId: null });
});

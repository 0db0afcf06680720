import { expect, test } from 'vitest';
import fc from 'fast-check';
import { type PageId, pageWords } from '../domain/manual/pages.ts';
import { linkTo, routeOf } from './addresses.ts';

const pages = Object.keys(pageWords) as PageId[];

test('every page is found again at its address, and whatever it names there comes back as it was', () => {
  const alone = pages.filter((page) => page !== 'opening');
  expect(alone.map((page) => routeOf(linkTo(page)))).toEqual(alone.map((page) => ({ page, name: '' })));
  const naming = fc.constantFrom('opening', 'walk', 'rules', 'building', 'print');
  fc.assert(
    fc.property(naming, fc.string({ minLength: 1, unit: 'grapheme' }), (page, name) => {
      fc.pre(!(name in {}));
      expect(routeOf(linkTo(page, name))).toEqual({ page, name });
    }),
  );
});

test('an address of an earlier version leads where the page is now', () => {
  expect(routeOf('#/bill')).toEqual({ page: 'pricing', name: '' });
});

test.each(['#/toString', '#/no-such-page', '', '#/opening', '#/opening/constructor', '#/opening/%E0%A4%A'])(
  'an address that leads nowhere leads to the schedule: %s',
  (address) => {
    expect(routeOf(address)).toEqual({ page: 'schedule', name: expect.any(String) });
  },
);

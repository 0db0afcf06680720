import { act } from '@testing-library/react';
import { beforeEach, expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { AddressBar } from './AddressBar.tsx';

beforeEach(() => history.replaceState(null, '', '#/schedule'));

const expectAddress = (address: string) => vi.waitFor(() => expect(location.hash).toBe(address));

test('an address leads to its page and its opening', async () => {
  const { store } = show(<AddressBar />, projectOf({ D1: {} }));
  act(() => void (location.hash = '#/walk/D1'));
  await vi.waitFor(() => expect(store.getState().session).toMatchObject({ page: 'walk', selectedId: 'D1' }));
  await vi.waitFor(() => expect(document.title).toBe('Walk — D1 — House — Latchward'));
});

test('a page of the app stands in the address, with the opening where it shows one', async () => {
  const { store } = show(<AddressBar />, projectOf({ D1: {} }));
  act(() => store.getState().goTo('print'));
  await expectAddress('#/print');
  act(() => store.getState().visit('opening', 'D1'));
  await expectAddress('#/opening/D1');
});

test('a link pressed while another page is coming up is followed, not taken back', async () => {
  const { store } = show(<AddressBar />, projectOf({ D1: {} }));
  act(() => {
    store.getState().goTo('print');
    location.hash = '#/legend';
  });
  await expectAddress('#/legend');
  await vi.waitFor(() => expect(store.getState().session.page).toBe('legend'));
});

test('an address before the first page is drawn is followed', async () => {
  history.replaceState(null, '', '#/print');
  const { store } = show(<AddressBar />, projectOf({}));
  location.hash = '#/review';
  await vi.waitFor(() => expect(store.getState().session.page).toBe('review'));
  expect(location.hash).toBe('#/review');
});

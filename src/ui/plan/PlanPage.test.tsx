import { act, fireEvent, screen, within } from '@testing-library/react';
import { beforeEach, expect, test, vi } from 'vitest';
import { jpegOf } from '../../../tests/screens/pictures.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { newSpace } from '../../domain/model/newProject.ts';
import type { Project } from '../../domain/model/project.ts';
import PlanPage from './PlanPage.tsx';

beforeEach(() => {
  vi.stubGlobal(
    'URL',
    Object.assign(URL, { createObjectURL: () => 'blob:picture', revokeObjectURL: () => undefined }),
  );
});

/** The first database of a page takes a while on a busy machine. */
const soon = { timeout: 15_000 };

const house: Project = {
  ...projectOf({ '101': {}, '102': {} }),
  floors: { g: { id: 'g', name: 'Ground floor', level: 0 } },
};
const drawing = new File([jpegOf(1)], 'A-101.jpg', { type: 'image/jpeg' });

async function withDrawing(project = house) {
  const shown = show(<PlanPage />, project);
  await shown.user.upload(screen.getByLabelText('Choose an image or a PDF'), drawing);
  await screen.findByRole('img', { name: 'Plan of Ground floor' }, soon);
  return shown;
}
/** A tap at shares of the drawing; the page lays nothing out, so its size is given. */
function tap(name: string | RegExp, x: number, y: number) {
  const area = screen.getByRole('button', { name });
  area.getBoundingClientRect = () => ({ left: 0, top: 0, width: 1000, height: 1000 }) as DOMRect;
  fireEvent.click(area, { clientX: x * 1000, clientY: y * 1000, detail: 1 });
}

test('openings are placed one after the other, by tap and by keyboard, moved, and taken off', async () => {
  const { user, store } = await withDrawing();
  const pins = () => store.getState().document.project.pins;
  await user.selectOptions(screen.getByRole('combobox', { name: 'Place on the plan' }), '101');
  tap(/^Tap where 101 is/, 0.25, 0.75);
  expect(pins()['101']).toMatchObject({ x: 0.25, y: 0.75 });
  expect(store.getState().document.project.openings['101']?.floorId).toBe('g');
  // The next one waits for its tap already; by keyboard the cross begins in the middle.
  screen.getByRole('button', { name: /^Tap where 102 is/ }).focus();
  await user.keyboard('{ArrowRight}{ArrowUp}{Enter}');
  expect(pins()['102']).toMatchObject({ x: 0.51, y: 0.49 });
  expect(screen.getByRole('link', { name: /^102, .*: open in the walk$/ })).toHaveAttribute(
    'href',
    '#/walk/102',
  );
  expect(screen.getByText('Everything on this floor is on the plan.')).toBeVisible();
  await user.click(screen.getByText('On this plan'));
  await user.click(screen.getByRole('button', { name: 'Move 101' }));
  tap(/^Tap where 101 is/, 0.5, 0.5);
  expect(pins()['101']).toMatchObject({ x: 0.5, y: 0.5 });
  await user.click(screen.getByRole('button', { name: 'Take 102 off the plan' }));
  expect(Object.keys(pins())).toEqual(['101']);
});

test('the scale is two taps and a length; a length that is none is said at the field', async () => {
  const { user, store } = await withDrawing();
  await user.click(screen.getByRole('button', { name: 'Set the scale', pressed: false }));
  const area = () => screen.getAllByRole('button', { name: 'Set the scale' })[1] as HTMLElement;
  for (const x of [0.1, 0.6]) {
    area().getBoundingClientRect = () => ({ left: 0, top: 0, width: 1000, height: 1000 }) as DOMRect;
    fireEvent.click(area(), { clientX: x * 1000, clientY: 100, detail: 1 });
  }
  const length = screen.getByRole('textbox', { name: 'Length between the two points' });
  await user.type(length, 'wide{Enter}');
  expect(screen.getByRole('alert')).toBeVisible();
  await user.clear(length);
  await user.type(length, '24 ft{Enter}');
  const plan = Object.values(store.getState().document.project.plans)[0];
  expect(plan?.scale).toMatchObject({ fromX: 0.1, toX: 0.6, lengthFt: 24 });
});

test('a file that is no picture is said, and nothing is on the floor', async () => {
  const { user, store } = show(<PlanPage />, house);
  await user.upload(
    screen.getByLabelText('Choose an image or a PDF'),
    new File(['a letter'], 'letter.png', { type: 'image/png' }),
  );
  expect(await screen.findByRole('alert', {}, soon)).toHaveTextContent('not a picture');
  expect(store.getState().document.project.plans).toEqual({});
});

test('a removed plan comes back with its pins', async () => {
  const { user, store } = await withDrawing();
  await user.selectOptions(screen.getByRole('combobox', { name: 'Place on the plan' }), '101');
  tap(/^Tap where 101 is/, 0.25, 0.75);
  await user.click(screen.getByText('On this plan'));
  await user.click(screen.getByRole('button', { name: 'Remove this plan' }));
  expect(store.getState().document.project.pins).toEqual({});
  store.getState().undo();
  expect(Object.keys(store.getState().document.project.pins)).toEqual(['101']);
});

test('spaces are placed by a tap, and the sides they tell of a door are taken by one press', async () => {
  const rooms = Object.fromEntries(
    (['corridor', 'room'] as const).map((kind) => [
      kind,
      { ...newSpace(kind, kind === 'room' ? 'Room 114' : 'Hall'), kind },
    ]),
  );
  const { user, store } = await withDrawing({ ...house, spaces: rooms });
  const place = () => screen.getByRole('combobox', { name: 'Place on the plan' });
  for (const [name, y] of [
    ['Hall', 0.6],
    ['Room 114', 0.4],
    ['101', 0.5],
  ] as const) {
    await user.selectOptions(place(), name);
    tap(new RegExp(`^Tap where ${name} is`), 0.5, y);
  }
  const door = () => store.getState().document.project.openings['101'];
  expect(door()).toMatchObject({ fromSpaceId: null, toSpaceId: null });
  const sides = screen.getByRole('region', { name: 'Sides by the plan' });
  await user.click(within(sides).getByRole('button', { name: '101: Hall → Room 114' }));
  expect(door()).toMatchObject({ fromSpaceId: 'corridor', toSpaceId: 'room' });
  expect(screen.queryByRole('region', { name: 'Sides by the plan' })).toBeNull();
});

test('from the walk its opening is placed by one press and a tap, stands apart, and leads back', async () => {
  const { user, store } = await withDrawing();
  act(() => store.getState().visit('plan', '102'));
  expect(screen.getByText('102 is not on this plan yet.')).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Place 102' }));
  tap(/^Tap where 102 is/, 0.5, 0.5);
  const pin = screen.getByRole('link', { name: /^102, .*: open in the walk$/ });
  expect(pin).toHaveAttribute('aria-current', 'location');
  expect(screen.getAllByRole('link', { name: 'Walk 102' })[0]).toHaveAttribute('href', '#/walk/102');
});

test('a drawing that is not in this browser is said, and its openings still lead to the walk', async () => {
  const floorPlan = {
    id: 'plan',
    floorId: 'g',
    name: 'A-101',
    sha256: 'd'.repeat(64),
    widthPx: 10,
    heightPx: 10,
    bytes: 1,
    scale: null,
    at: '2026-03-02T12:00:00.000Z',
    by: '',
  };
  const pins = { '101': { id: '101', planId: 'plan', x: 0.5, y: 0.5 } };
  const { user } = show(<PlanPage />, { ...house, plans: { plan: floorPlan }, pins });
  expect(await screen.findByText(/The drawing of this floor is not on this device/, {}, soon)).toBeVisible();
  await user.click(screen.getByText('On this plan'));
  expect(screen.getByRole('link', { name: 'Walk 101' })).toBeVisible();
});

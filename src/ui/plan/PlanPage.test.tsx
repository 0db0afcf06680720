import { fireEvent, screen } from '@testing-library/react';
import { beforeEach, expect, test, vi } from 'vitest';
import { jpegOf } from '../../../tests/screens/pictures.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
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

async function withDrawing() {
  const shown = show(<PlanPage />, house);
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

import { screen, within } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { createPreferences } from '../../app/preferences.ts';
import { firstView, withViews } from '../../domain/grid/view.ts';
import { known } from '../../domain/testing/facts.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { lobbyTrap } from '../../domain/testing/smallBuilding.ts';
import PrintPage from './PrintPage.tsx';

const preview = () => screen.getByRole('region', { name: 'Preview' });
const boxes = () =>
  within(screen.getByRole('group', { name: 'What to print' })).getAllByRole<HTMLInputElement>('checkbox');

test('only what is ticked is laid out', async () => {
  const project = lobbyTrap();
  const { user } = show(<PrintPage />, project);
  for (const box of boxes()) if (box.checked) await user.click(box);
  expect(preview()).not.toHaveTextContent('Legend');
  await user.click(screen.getByRole('checkbox', { name: /^Legend/ }));
  expect(preview()).toHaveTextContent('Legend');
  await user.click(screen.getByRole('checkbox', { name: /^Door schedule/ }));
  for (const { mark } of Object.values(project.openings)) expect(preview()).toHaveTextContent(mark);
});

test('sheets by opening print what the schedule is narrowed to, and say so until all are shown again', async () => {
  const preferences = createPreferences(undefined);
  const now = { ...firstView, only: { leafMaterial: ['Hollow metal'] } };
  preferences.set('gridViews', withViews('', 'p', { now, saved: [] }));
  const project = projectOf({ '101': { leafMaterial: known('hollowMetal') }, '102': {} });
  const { user } = show(<PrintPage />, project, { preferences });
  for (const box of boxes()) if (box.checked) await user.click(box);
  await user.click(screen.getByRole('checkbox', { name: /^Opening sheets/ }));
  const sheets = () => screen.getAllByRole('article').map((one) => one.getAttribute('aria-label'));
  expect(sheets()).toEqual(['101']);
  expect(screen.getByText(/The schedule shows/)).toHaveTextContent(
    'Opening sheets. The schedule shows 1 of 2 openings (only some values are shown of Leaf), so that one is printed.',
  );
  await user.click(screen.getByRole('button', { name: 'Show all openings' }));
  expect(sheets()).toEqual(['101', '102']);
});

test('memory is swept before any print, also one that the browser was asked for', () => {
  const { view } = show(<PrintPage />, lobbyTrap());
  const asked = vi.spyOn(Reflect, 'construct');
  const sweeps = () => asked.mock.calls.filter(([made]) => made === ArrayBuffer).length;
  window.dispatchEvent(new Event('beforeprint'));
  expect(sweeps()).toBe(1);
  view.unmount();
  window.dispatchEvent(new Event('beforeprint'));
  expect(sweeps()).toBe(1);
  asked.mockRestore();
});

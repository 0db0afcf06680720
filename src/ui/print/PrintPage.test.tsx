import { screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { show } from '../../../tests/screens/show.tsx';
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

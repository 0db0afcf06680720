import { screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { ImportSchedule } from './ImportSchedule.tsx';

const rows = ['Mark\tDoor type\tFire rating', '101\tSingle swinging leaf\t45', '102\tflying carpet\t90'].join(
  '\n',
);

test('pasted rows are shown as they were read before anything is stored, and come in as one step', async () => {
  const { user, store } = show(<ImportSchedule />, projectOf({}), {
    // Nothing is stored here that a copy could be made of.
    copyBeforeList: () => Promise.resolve({ ok: true }),
  });
  const openings = () => Object.values(store.getState().document.project.openings);
  await user.click(screen.getByRole('textbox', { name: /paste rows/ }));
  await user.paste(rows);
  await user.click(screen.getByRole('button', { name: 'Check these rows' }));
  const preview = await screen.findByRole('region', { name: 'Preview of pasted rows' });
  expect(preview).toHaveTextContent('flying carpet');
  expect(openings()).toEqual([]);
  await user.click(within(preview).getByRole('button', { name: /^Import/ }));
  await screen.findByText(/2 openings/);
  expect(openings().map(({ mark }) => mark)).toEqual(['101', '102']);
  expect(openings()[0]?.facts.fireRatingMin).toMatchObject({ is: 'known', value: 45 });
  // What was not understood stays unknown; it is never guessed.
  expect(openings()[1]?.facts.doorType).toBeUndefined();
  expect(store.getState().document.past).toHaveLength(1);
});

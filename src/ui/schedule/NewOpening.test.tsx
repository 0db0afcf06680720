import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { known } from '../../domain/testing/facts.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { NewOpening } from './NewOpening.tsx';

const project = projectOf({ '101': { doorType: known('single') }, '102': {} });
const openings = (store: ReturnType<typeof show>['store']) =>
  Object.values(store.getState().document.project.openings);

test('a mark that is already used is refused with a sentence, and the text stays', async () => {
  const { user, store } = show(<NewOpening />, project);
  await user.click(screen.getByRole('button', { name: 'New opening' }));
  const mark = screen.getByRole('textbox', { name: 'Mark' });
  await user.clear(mark);
  await user.type(mark, '101');
  await user.click(screen.getByRole('button', { name: 'Add' }));
  expect(screen.getByRole('alert')).toHaveTextContent(
    'Mark 101 is already used; every opening needs a mark of its own.',
  );
  expect(mark).toHaveValue('101');
  expect(mark).toHaveAttribute('aria-invalid', 'true');
  expect(openings(store)).toHaveLength(2);
});

test('the next free mark is offered; facts of another opening stand as assumed', async () => {
  const { user, store } = show(<NewOpening likeId="101" />, project);
  await user.click(screen.getByRole('button', { name: 'New opening' }));
  expect(screen.getByRole('textbox', { name: 'Mark' })).toHaveValue('103');
  expect(screen.getByRole('combobox', { name: 'Facts' })).toHaveDisplayValue('Same as 101');
  await user.click(screen.getByRole('button', { name: 'Add' }));
  const added = openings(store).find((one) => one.mark === '103');
  expect(added?.facts.doorType).toMatchObject({ is: 'assumed', value: 'single', from: 'same as 101' });
});

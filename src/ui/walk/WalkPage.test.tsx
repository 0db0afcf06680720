import { act, screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import WalkPage from './WalkPage.tsx';

const question = () => screen.getByRole('region', { name: 'Next question' });

test('an empty project asks for its first opening', () => {
  show(<WalkPage />, projectOf({}));
  expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Nothing to walk yet');
});

test('an opening that is not there is said to be missing, with the way to the others', () => {
  const { store } = show(<WalkPage />, projectOf({ 101: {} }));
  act(() => store.getState().select('gone'));
  expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('This opening is not in the project');
  expect(screen.getByRole('link', { name: 'schedule' })).toHaveAttribute('href', '#/schedule');
});

test('an answer is stored with one tap and another question follows', async () => {
  const { user, store } = show(<WalkPage />, projectOf({ 101: {} }));
  const asked = within(question()).getByRole('heading').textContent;
  const [first] = within(question()).getAllByRole('button');
  if (!first) throw new Error('Nothing can be answered.');
  await user.click(first);
  expect(Object.keys(store.getState().document.project.openings['101']?.facts ?? {})).not.toEqual([]);
  expect(within(question()).getByRole('heading').textContent).not.toBe(asked);
  expect(store.getState().document.past).toHaveLength(1);
});

test('before the floor is left, it says when the work last went into a file', async () => {
  const { user } = show(<WalkPage />, projectOf({ 101: {} }));
  await user.click(screen.getByText('Before you leave the floor'));
  expect(
    screen.getByText('No copy of this project was saved to a file from this browser yet.'),
  ).toBeVisible();
});

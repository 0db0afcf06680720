import { act, screen } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { SavingMark } from './SavingMark.tsx';

test('what cannot be saved says so and offers a copy at once', async () => {
  const downloadCopy = vi.fn<() => void>();
  const { user, store } = show(<SavingMark />, projectOf({}), { downloadCopy });
  expect(screen.getByRole('status')).toHaveTextContent('Saved');
  expect(screen.queryByRole('button')).not.toBeInTheDocument();
  act(() => store.getState().setSaving({ kind: 'failed', says: 'The disk is full.', tries: 2 }));
  expect(screen.getByRole('status')).toHaveTextContent('Not saved');
  expect(screen.getByText('The disk is full.')).toBeInTheDocument();
  await user.click(screen.getByRole('button', { name: 'Save a copy' }));
  expect(downloadCopy).toHaveBeenCalledOnce();
});

test('a project that can only be read here says why', () => {
  const { store } = show(<SavingMark />, projectOf({}));
  act(() => store.getState().setSaving({ kind: 'readOnly', says: 'It is open in another window.' }));
  expect(screen.getByRole('status')).toHaveTextContent('Read only');
  expect(screen.getByText('It is open in another window.')).toBeInTheDocument();
});

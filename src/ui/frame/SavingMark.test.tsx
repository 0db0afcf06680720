import { act, screen } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { SavingMark } from './SavingMark.tsx';

test('what cannot be saved says so and offers a copy at once', async () => {
  const downloadCopy = vi.fn<() => Promise<void>>(() => Promise.resolve());
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

test('while a project is opened nothing is said to be saved', () => {
  const { store } = show(<SavingMark />, projectOf({}));
  act(() => store.getState().setReady(false));
  expect(screen.getByRole('status')).toHaveTextContent(/^Opening…$/);
  act(() => store.getState().setReady(true));
  act(() => store.getState().setBusy(true));
  expect(screen.getByRole('status')).toHaveTextContent(/^Opening…$/);
});

test('a save that takes long offers a copy, one that passes does not', () => {
  vi.useFakeTimers();
  try {
    const { store } = show(<SavingMark />, projectOf({}));
    act(() => store.getState().setSaving({ kind: 'saving' }));
    act(() => void vi.advanceTimersByTime(1_000));
    expect(screen.queryByRole('button')).not.toBeInTheDocument();
    act(() => void vi.advanceTimersByTime(1_000));
    expect(screen.getByRole('button', { name: 'Save a copy' })).toBeInTheDocument();
    act(() => store.getState().setSaving({ kind: 'saved' }));
    expect(screen.queryByRole('button')).not.toBeInTheDocument();
  } finally {
    vi.useRealTimers();
  }
});

test('a stored project that is gone can be stored again', async () => {
  const storeAgain = vi.fn<() => Promise<void>>(() => Promise.resolve());
  const { user, store } = show(<SavingMark />, projectOf({}), { storeAgain });
  act(() => store.getState().setSaving({ kind: 'readOnly', says: 'It is gone.', canStoreAgain: true }));
  await user.click(screen.getByRole('button', { name: 'Store it again' }));
  expect(storeAgain).toHaveBeenCalledOnce();
});

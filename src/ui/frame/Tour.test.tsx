import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { Tour } from './Tour.tsx';

test('the tour is for the screen and stays off paper', () => {
  show(<Tour />, demoProject());
  expect(screen.getByRole('complementary', { name: 'Tour' })).toHaveClass('screen-only');
});

test('somebody’s own project is not called an invented building', () => {
  show(<Tour />, projectOf({ 101: {} }));
  expect(screen.queryByRole('complementary', { name: 'Tour' })).not.toBeInTheDocument();
});

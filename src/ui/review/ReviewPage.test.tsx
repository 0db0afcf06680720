import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { demoProject } from '../../../scripts/demo/demoProject.ts';
import { show } from '../../../tests/screens/show.tsx';
import { openSignaturesFor } from '../../app/review.ts';
import ReviewPage from './ReviewPage.tsx';

test('the register counts what is open as the word Preliminary beside it does', () => {
  const project = demoProject();
  const { questions, says } = openSignaturesFor(project);
  expect(questions).toBeGreaterThan(10);
  show(<ReviewPage />, project);
  expect(screen.getAllByRole('status')[0]).toHaveTextContent(`: ${questions} must be signed before issue`);
  expect(document.body).toHaveTextContent(says);
});

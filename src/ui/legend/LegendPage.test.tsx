import { screen } from '@testing-library/react';
import { expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { standingCautions } from '../../domain/text/cautions.ts';
import LegendPage from './LegendPage.tsx';

test('the cautions come first', () => {
  show(<LegendPage />, projectOf({}));
  const first = document.querySelector('section');
  for (const caution of standingCautions) expect(first).toHaveTextContent(caution);
});

test('a word of the trade finds its entry, and what nobody wrote about finds nothing', async () => {
  const { user } = show(<LegendPage />, projectOf({}));
  const search = screen.getByLabelText('Find a word');
  await user.type(search, 'crash bar');
  const words = document.querySelector('section[aria-label="Words"]');
  expect([...(words?.querySelectorAll('dt') ?? [])].map((one) => one.textContent)).toEqual(['Exit device']);
  expect(words).toHaveTextContent('Also called crash bar');
  await user.clear(search);
  await user.type(search, 'zebra crossing');
  expect(screen.getByText('No match.')).toBeInTheDocument();
});

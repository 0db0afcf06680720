import { screen, waitFor } from '@testing-library/react';
import { afterEach, expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import type { PrintPart } from '../../exporting/sheets/parts.ts';
import { PrintButtons } from './PrintButtons.tsx';
import { usePrintRun } from './usePrintRun.ts';

afterEach(() => vi.restoreAllMocks());

const parts: readonly PrintPart[] = [0, 40, 80].map((from) => [
  { id: 'openings', from, to: from + 40, of: 120 },
]);

function Run() {
  const run = usePrintRun(parts);
  return (
    <>
      <p>shows {run.at + 1}</p>
      <PrintButtons parts={parts} run={run} ready />
    </>
  );
}

/** A printer that is done when it is told so, with what stood on the page each time. */
function printer() {
  const asked: string[] = [];
  vi.spyOn(window, 'print').mockImplementation(() => {
    asked.push(screen.getByText(/^shows/).textContent ?? '');
  });
  return { asked, done: () => window.dispatchEvent(new Event('afterprint')) };
}

test('parts go to the printer one after the other, each when the one before is done', async () => {
  const { asked, done } = printer();
  const { user } = show(<Run />, projectOf({}));
  await user.click(screen.getByRole('button', { name: 'Print all 3 parts' }));
  for (const part of [1, 2, 3]) {
    await waitFor(() => expect(asked).toHaveLength(part), { timeout: 3000 });
    done();
  }
  expect(asked).toEqual(['shows 1', 'shows 2', 'shows 3']);
  expect(await screen.findByRole('button', { name: 'Print all 3 parts' })).toBeEnabled();
});

test('stopped between two parts, nothing more is printed', async () => {
  const { asked, done } = printer();
  const { user } = show(<Run />, projectOf({}));
  await user.click(screen.getByRole('button', { name: 'Print all 3 parts' }));
  await waitFor(() => expect(asked).toHaveLength(1), { timeout: 3000 });
  expect(screen.getByRole('progressbar')).toHaveAccessibleName(
    'Printing part 1: Opening sheets 1 to 40 of 120',
  );
  await user.click(screen.getByRole('button', { name: 'Stop' }));
  done();
  await new Promise((later) => setTimeout(later, 700));
  expect(asked).toEqual(['shows 1']);
});

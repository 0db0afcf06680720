import type { ReactNode } from 'react';
import { screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { assumed, known, unknown } from '../../domain/testing/facts.ts';
import { AppContext } from '../context.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { FactField } from './FactField.tsx';
import type { SurveyFact } from './useAnswer.ts';

const door = { id: '101', mark: '101' };
const render = (field: ReactNode) => show(field, projectOf({ '101': {} }));
const accepted = () => vi.fn<(fact: SurveyFact | null) => string | undefined>();

test('a known length stands in inches, and beside it in feet and in millimeters', () => {
  render(<FactField fact="leafWidthIn" of={door} value={known(36)} onAnswer={accepted()} />);
  expect(screen.getByRole('textbox', { name: 'Leaf width' })).toHaveValue('36');
  expect(screen.getByText('3\'-0" · 914 mm')).toBeInTheDocument();
});

test('what was not surveyed is not the same as what nobody could tell', () => {
  const { view, app } = render(
    <FactField fact="leafMaterial" of={door} value={undefined} onAnswer={accepted()} />,
  );
  const select = screen.getByRole('combobox', { name: 'Leaf material' });
  expect(select).toHaveDisplayValue('Not surveyed');
  view.rerender(
    <AppContext value={app}>
      <FactField fact="leafMaterial" of={door} value={unknown} onAnswer={accepted()} />
    </AppContext>,
  );
  expect(select).toHaveDisplayValue('Not known');
});

test('a question of yes or no has no answer inked in before somebody gave one', async () => {
  const onAnswer = accepted();
  render(<FactField fact="frameGrouted" of={door} value={undefined} onAnswer={onAnswer} />);
  for (const radio of screen.getAllByRole('radio')) expect(radio).not.toBeChecked();
  await userEvent.click(screen.getByRole('radio', { name: 'Not known' }));
  expect(onAnswer).toHaveBeenLastCalledWith({ is: 'unknown' });
});

test('an assumption says where it comes from and is confirmed with one tap', async () => {
  const onAnswer = accepted();
  render(<FactField fact="leafWidthIn" of={door} value={assumed(36, 'same as 103')} onAnswer={onAnswer} />);
  expect(screen.getByText('Assumed: same as 103')).toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: 'Confirm Leaf width' }));
  expect(onAnswer).toHaveBeenCalledWith(known(36));
});

test('what the app assumed itself shows its value and is confirmed as well', async () => {
  const onAnswer = accepted();
  const borrowed = { value: false, words: 'no', from: 'not requested', assumed: true };
  render(
    <FactField fact="wishInterlock" of={door} value={undefined} borrowed={borrowed} onAnswer={onAnswer} />,
  );
  expect(screen.getByText('Assumed: no — not requested')).toBeInTheDocument();
  await userEvent.click(screen.getByRole('button', { name: /^Confirm/ }));
  expect(onAnswer).toHaveBeenCalledWith(known(false));
});

test('text that cannot be read stays, says why, and stores nothing', async () => {
  const onAnswer = accepted();
  render(<FactField fact="leafWidthIn" of={door} value={undefined} onAnswer={onAnswer} />);
  const field = screen.getByRole('textbox', { name: 'Leaf width' });
  await userEvent.type(field, 'three feet{Enter}');
  expect(field).toHaveValue('three feet');
  expect(field).toHaveAttribute('aria-invalid', 'true');
  expect(screen.getByRole('alert')).toHaveTextContent('“three feet” is not a length that can be read');
  expect(onAnswer).not.toHaveBeenCalled();
  await userEvent.clear(field);
  await userEvent.type(field, '915 mm{Enter}');
  expect(onAnswer).toHaveBeenCalledWith(known(36.02));
});

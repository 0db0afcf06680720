import { fireEvent, screen, within } from '@testing-library/react';
import { beforeAll, expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { headWords } from '../../domain/grid/keys.ts';
import { known } from '../../domain/testing/facts.ts';
import { useApp } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { ScheduleGrid } from './ScheduleGrid.tsx';
import { useShown } from './useShown.ts';

// The rows in sight are found by measuring, and jsdom measures nothing; it opens no dialogs either.
beforeAll(() => {
  Object.defineProperties(HTMLElement.prototype, {
    clientHeight: { configurable: true, get: () => 600 },
    clientWidth: { configurable: true, get: () => 1000 },
    offsetHeight: { configurable: true, get: () => 48 },
  });
  Object.defineProperty(HTMLDialogElement.prototype, 'showModal', {
    configurable: true,
    value(this: HTMLDialogElement) {
      this.open = true;
    },
  });
});
function Schedule() {
  const project = useApp((state) => state.document.project);
  const { desk, shown, ground } = useShown(project, useDecisions());
  return <ScheduleGrid desk={desk} shown={shown} ground={ground} onOpen={vi.fn<(id: string) => void>()} />;
}

async function atCell(mark: string, column: string) {
  const shown = show(
    <Schedule />,
    projectOf({ '101': { latch: known('mortise'), fireRatingMin: known(45) }, '102': {}, '103': {} }),
  );
  const row = (await screen.findByRole('gridcell', { name: mark })).closest<HTMLElement>('[role="row"]');
  const cell = row?.querySelector<HTMLElement>(`[data-column="${column}"]`);
  if (!cell) throw new Error(`no cell of ${column} at ${mark}`);
  cell.focus();
  const facts = (id: string) => shown.store.getState().document.project.openings[id]?.facts;
  return { ...shown, cell, facts };
}

const selected = () =>
  screen
    .getAllByRole('gridcell')
    .filter((cell) => cell.getAttribute('aria-selected') === 'true')
    .map((cell) => cell.textContent);
const copy = () => {
  const setData = vi.fn<(kind: string, text: string) => void>();
  fireEvent.copy(document.activeElement as Element, { clipboardData: { setData } });
  return Object.fromEntries(setData.mock.calls);
};
const paste = (text: string) =>
  fireEvent.paste(document.activeElement as Element, { clipboardData: { getData: () => text } });

test('a range by Shift and arrows is selected and copied as cells', async () => {
  const { user, cell } = await atCell('101', 'latch');
  expect(screen.getByRole('grid')).toHaveAttribute('aria-multiselectable', 'true');
  await user.keyboard('{Shift>}{ArrowRight}{/Shift}');
  await vi.waitFor(() => expect(selected()).toEqual(['Mortise latch', '45 min']));
  await vi.waitFor(() => expect(cell).not.toHaveFocus());
  const { 'text/plain': text, 'text/html': html } = copy();
  expect(text).toBe('Mortise latch\t45 min\r\n');
  expect(html).toContain('<td>Mortise latch</td><td>45 min</td>');
  expect(screen.getByText('2 cells selected: 1 opening, 2 columns')).toBeVisible();
});

test('Ctrl+Space selects the column, Ctrl+A everything, Escape one cell', async () => {
  const { user } = await atCell('102', 'latch');
  await user.keyboard('{Control>} {/Control}');
  await vi.waitFor(() => expect(selected()).toHaveLength(3));
  await user.keyboard('{Control>}a{/Control}');
  await vi.waitFor(() => expect(selected().length).toBe(screen.getAllByRole('gridcell').length));
  await user.keyboard('{Escape}');
  await vi.waitFor(() => expect(selected()).toHaveLength(1));
});

test('a paste is shown cell by cell, takes what can be read, and one undo takes it back', async () => {
  const { user, store, facts } = await atCell('102', 'latch');
  paste('glue\t90 min\nMortise latch\t3 ft\n');
  const dialog = screen.getByRole('dialog', { name: 'Paste: look before it is applied' });
  expect(facts('102')).toEqual({});
  expect(dialog).toHaveTextContent('2 cells change. 2 cells are refused and stay as they are.');
  const rows = within(dialog)
    .getAllByRole('row')
    .map((row) => row.textContent);
  expect(rows[1]).toMatch(/^102Latchnot surveyedglueRefused: Latch or exit device cannot be “glue”/);
  expect(rows[2]).toMatch(/^103Labelnot surveyed3 ftRefused: /);
  expect(rows[3]).toBe('102Labelnot surveyed90 minChanges to 90 min');
  await user.click(within(dialog).getByRole('button', { name: 'Apply' }));
  expect(screen.queryByRole('dialog')).not.toBeInTheDocument();
  expect(facts('102')).toMatchObject({ fireRatingMin: { is: 'known', value: 90 } });
  expect(facts('103')).toMatchObject({ latch: { is: 'known', value: 'mortise' } });
  store.getState().undo();
  expect([facts('102'), facts('103')]).toEqual([{}, {}]);
});

test('Ctrl+Enter leads to the value for all selected, Delete clears them as one step', async () => {
  const { user, store, facts } = await atCell('101', 'latch');
  await user.keyboard('{Control>} {/Control}');
  await user.keyboard('{Control>}{Enter}{/Control}');
  const field = screen.getByRole('combobox', { name: 'Set all to' });
  expect(field).toHaveFocus();
  await user.type(field, 'Mortise latch{Enter}');
  expect(facts('103')).toMatchObject({ latch: { is: 'known', value: 'mortise' } });
  screen.getAllByRole('gridcell', { name: 'Mortise latch' })[0]?.focus();
  await user.keyboard('{Delete}');
  expect(facts('102')).toMatchObject({ latch: { is: 'unknown' } });
  store.getState().undo();
  expect(facts('102')).toMatchObject({ latch: { is: 'known', value: 'mortise' } });
});

test('a side that is typed for the first time becomes a space', async () => {
  const { user, store } = await atCell('102', 'to');
  await user.keyboard('{F2}');
  await user.keyboard('Lab 2{Enter}');
  const { openings, spaces } = store.getState().document.project;
  expect(spaces[openings['102']?.toSpaceId ?? '']?.name).toBe('Lab 2');
});

test('rows stand in groups that fold, and the view is saved by name', async () => {
  const { user, app } = await atCell('101', 'latch');
  await user.click(screen.getByText('Order and groups'));
  await user.selectOptions(screen.getByRole('combobox', { name: 'Group by' }), 'State');
  const head = await screen.findByRole('button', { name: /3 openings, 3 not settled/ });
  await user.click(head);
  expect(screen.queryByRole('gridcell', { name: '101' })).not.toBeInTheDocument();
  expect(screen.getByRole('button', { name: /3 openings/ })).toHaveAttribute('aria-expanded', 'false');
  await user.click(screen.getByText('Saved views'));
  await user.type(screen.getByRole('textbox', { name: 'Name of this view' }), 'By state{Enter}');
  expect(screen.getByRole('button', { name: 'By state' })).toBeVisible();
  expect(app.preferences.get('gridViews')).toContain('"group":"state"');
});

test('a press beside a mark selects its row, a drag or Shift more rows; the head of a column selects it and sorts nothing', async () => {
  const { user } = await atCell('101', 'latch');
  const says = () => screen.getByText(/cells selected/).textContent;
  const heads = screen.getAllByTitle(headWords.row);
  const [first, second, third] = heads.map((one) => one.closest('[role=gridcell]') && one);
  if (!first || !second || !third) throw new Error('Three rows stand there.');
  await user.pointer({ keys: '[MouseLeft>]', target: first });
  const one = says();
  expect(one).toMatch(/: 1 opening, \d+ columns$/);
  await user.pointer([{ target: third }, { keys: '[/MouseLeft]' }]);
  expect(says()).toMatch(/: 3 openings, \d+ columns$/);
  await user.click(second);
  await user.keyboard('{Shift>}');
  await user.click(third);
  await user.keyboard('{/Shift}');
  expect(says()).toMatch(/: 2 openings, \d+ columns$/);

  const column = screen.getAllByTitle(headWords.column)[1];
  if (!column) throw new Error('A second column stands there.');
  await user.click(column);
  expect(says()).toMatch(/: 3 openings, 1 column$/);
  expect(screen.queryAllByRole('columnheader').map((head) => head.getAttribute('aria-sort'))).not.toContain(
    'ascending',
  );
});

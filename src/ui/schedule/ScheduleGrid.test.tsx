import { fireEvent, screen } from '@testing-library/react';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { known } from '../../domain/testing/facts.ts';
import { useApp } from '../context.ts';
import { useDecisions } from '../useDecisions.ts';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { ScheduleGrid } from './ScheduleGrid.tsx';
import { useShown } from './useShown.ts';

// The rows in sight are found by measuring, and jsdom measures nothing: here the grid is 600 px, a row 48 px high.
beforeAll(() => {
  Object.defineProperties(HTMLElement.prototype, {
    clientHeight: { configurable: true, get: () => 600 },
    clientWidth: { configurable: true, get: () => 1000 },
    offsetHeight: { configurable: true, get: () => 48 },
  });
});

function Grid({ onOpen }: { onOpen: (id: string) => void }) {
  const project = useApp((state) => state.document.project);
  const { desk, shown, ground } = useShown(project, useDecisions());
  return <ScheduleGrid desk={desk} shown={shown} ground={ground} onOpen={onOpen} />;
}

async function atFirstCell() {
  const onOpen = vi.fn<(id: string) => void>();
  const project = projectOf({
    '101': { doorType: known('single'), leafMaterial: known('hollowMetal') },
    '102': {},
    S1: {},
    S12: {},
  });
  const { user, store } = show(<Grid onOpen={onOpen} />, project);
  const cell = await screen.findByRole('gridcell', { name: '101' });
  cell.focus();
  const fact = (id: string, key: 'doorType' | 'leafMaterial') =>
    store.getState().document.project.openings[id]?.facts[key];
  return { user, onOpen, store, fact };
}

const focused = () => document.activeElement?.closest('[data-cell]');
const cellAt = () => focused()?.getAttribute('data-cell');
/** Presses a key and waits until the focus has gone to another cell. */
async function go(user: { keyboard: (keys: string) => Promise<void> }, keys: string) {
  const before = cellAt();
  await user.keyboard(keys);
  await vi.waitFor(() => expect([before, undefined, null]).not.toContain(cellAt()));
}
async function toColumn(user: { keyboard: (keys: string) => Promise<void> }, key: string) {
  for (let step = 0; step < 20 && focused()?.getAttribute('data-column') !== key; step++) {
    await go(user, '{ArrowRight}');
  }
}

describe('the schedule by keyboard', () => {
  test('arrows move the one stop of the grid, Enter opens the opening under it', async () => {
    const { user, onOpen } = await atFirstCell();
    await user.keyboard('{ArrowDown}');
    await vi.waitFor(() => expect(screen.getByRole('gridcell', { name: '102' })).toHaveFocus());
    expect(screen.getAllByRole('gridcell').filter((cell) => cell.tabIndex === 0)).toHaveLength(1);
    await user.keyboard('{Enter}');
    expect(onOpen).toHaveBeenCalledWith('102');
  });

  test('letters jump to the mark that begins so', async () => {
    const { user } = await atFirstCell();
    await user.keyboard('s12');
    await vi.waitFor(() => expect(screen.getByRole('gridcell', { name: 'S12' })).toHaveFocus());
  });

  test('F2 edits a cell: Escape leaves it, Enter keeps it, and the focus comes back', async () => {
    const { user, fact } = await atFirstCell();
    await toColumn(user, 'leafMaterial');
    await user.keyboard('{F2}');
    const editor = screen.getByRole('combobox', { name: 'Leaf, 101' });
    expect(editor).toHaveFocus();
    // An arrow key on a select is a change; nothing may be kept by it.
    fireEvent.change(editor, { target: { value: 'woodSolidCore' } });
    await user.keyboard('{Escape}');
    expect(fact('101', 'leafMaterial')).toMatchObject({ value: 'hollowMetal' });
    await vi.waitFor(() => expect(focused()?.getAttribute('data-column')).toBe('leafMaterial'));
    await user.keyboard('{F2}');
    fireEvent.change(screen.getByRole('combobox', { name: 'Leaf, 101' }), {
      target: { value: 'woodSolidCore' },
    });
    await user.keyboard('{Enter}');
    expect(fact('101', 'leafMaterial')).toMatchObject({ is: 'known', value: 'woodSolidCore' });
  });

  test('Ctrl+D takes the value above as assumed, and undo takes it back', async () => {
    const { user, fact, store } = await atFirstCell();
    await toColumn(user, 'doorType');
    await go(user, '{ArrowDown}');
    await user.keyboard('{Control>}d{/Control}');
    expect(fact('102', 'doorType')).toMatchObject({ is: 'assumed', value: 'single', from: 'same as 101' });
    store.getState().undo();
    expect(fact('102', 'doorType')).toBeUndefined();
  });
});

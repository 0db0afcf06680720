import { fireEvent, screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { workbookOf } from '../../exporting/xlsx/workbook.ts';
import { ImportSchedule } from './ImportSchedule.tsx';

const rows = ['Mark\tDoor type\tFire rating', '101\tSingle swinging leaf\t45', '102\tflying carpet\t90'].join(
  '\n',
);

test('pasted rows are shown as they were read before anything is stored, and come in as one step', async () => {
  const { user, store } = show(<ImportSchedule />, projectOf({}), {
    // Nothing is stored here that a copy could be made of.
    copyBeforeList: () => Promise.resolve({ ok: true }),
  });
  const openings = () => Object.values(store.getState().document.project.openings);
  await user.click(screen.getByRole('textbox', { name: /paste rows/ }));
  await user.paste(rows);
  await user.click(screen.getByRole('button', { name: 'Check these rows' }));
  const preview = await screen.findByRole('region', { name: 'Preview of pasted rows' });
  expect(preview).toHaveTextContent('flying carpet');
  expect(openings()).toEqual([]);
  await user.click(within(preview).getByRole('button', { name: /^Import/ }));
  await screen.findByText(/2 openings/);
  expect(openings().map(({ mark }) => mark)).toEqual(['101', '102']);
  expect(openings()[0]?.facts.fireRatingMin).toMatchObject({ is: 'known', value: 45 });
  // What was not understood stays unknown; it is never guessed.
  expect(openings()[1]?.facts.doorType).toBeUndefined();
  expect(store.getState().document.past).toHaveLength(1);
});

/** A COBie workbook of one door between an office and a room nobody can read. */
const sheets = [
  {
    name: 'Component',
    head: ['Name', 'TypeName', 'Space', 'ExtObject'],
    rows: [['D1', 'T', 'A1,A2', 'IfcDoor']],
  },
  { name: 'Type', head: ['Name'], rows: [['T']] },
  {
    name: 'Space',
    head: ['Name', 'Category', 'FloorName', 'Description'],
    rows: [
      ['A1', '13-15 11 34 11: Office', 'Level 1', 'Accounts'],
      ['A2', '', 'Level 1', 'Raum'],
    ],
  },
];

test('what a room of a model is used for comes in only where it is taken', async () => {
  const { user, store } = show(<ImportSchedule />, projectOf({}), {
    copyBeforeList: () => Promise.resolve({ ok: true }),
  });
  const book = await workbookOf(sheets);
  const file = new File([new Uint8Array(book)], 'rooms.xlsx');
  Object.assign(file, { arrayBuffer: () => Promise.resolve(book.slice().buffer) });
  fireEvent.change(screen.getByLabelText('Schedule or building model'), { target: { files: [file] } });
  const preview = await screen.findByRole('region', { name: 'Preview of rooms.xlsx' });
  const take = within(preview).getByRole('checkbox', { name: 'Take Business for Accounts A1' });
  expect(take).not.toBeChecked();
  expect(preview).toHaveTextContent('Raum A2: name “Raum”. These words are not known here.');
  await user.click(within(preview).getByRole('button', { name: 'Take the 1 without a doubt' }));
  expect(take).toBeChecked();
  await user.click(within(preview).getByRole('button', { name: /^Import/ }));
  await screen.findByText(/1 opening imported/);
  expect(Object.values(store.getState().document.project.spaces).map(({ name, use }) => [name, use])).toEqual(
    [
      ['Accounts A1', 'business'],
      ['Raum A2', null],
    ],
  );
});

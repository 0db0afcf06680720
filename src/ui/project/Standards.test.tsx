import { screen, within } from '@testing-library/react';
import { expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { known } from '../../domain/testing/facts.ts';
import { standardOf, standardText } from '../../domain/project/standardFile.ts';
import type { Facts } from '../../domain/model/fact.ts';
import { PreferredDevices } from './PreferredDevices.tsx';
import { Standards } from './Standards.tsx';
import { useApp } from '../context.ts';

const office: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  readerSides: known('secure'),
};
const project = projectOf({ '101': office });
const text = (edition: string, devices: string[]) =>
  standardText(
    standardOf(
      {
        ...project,
        amendments: [
          {
            id: 'a',
            says: 'No strikes here.',
            source: 'Memo 7',
            effect: 'prohibit',
            when: {},
            devices,
            releases: [],
            failModes: [],
          },
        ],
      },
      { id: 's', name: 'District standard', edition },
    ),
  );
const file = (content: string) => new File([content], 'a.json', { type: 'application/json' });
function Page() {
  return <Standards project={useApp((state) => state.document.project)} />;
}

test('an owner’s standard is looked at before it is followed, and undone in one step', async () => {
  const { user, store } = show(<Page />, project);
  const input = screen.getByLabelText('Follow a standard, or a newer edition of one');
  await user.upload(input, file('mark,door'));
  expect(screen.getByText(/not JSON/)).toBeVisible();
  await user.upload(input, file(text('1', ['strikeMortise'])));
  const preview = await screen.findByRole('region', { name: 'What the standard would change' });
  expect(preview).toHaveTextContent('1 rule added.');
  expect(preview).toHaveTextContent('1 opening of 1 would come out differently.');
  expect(preview).toHaveTextContent('District standard, edition 1');
  expect(store.getState().document.project.amendments).toEqual([]);
  await user.click(screen.getByRole('button', { name: 'Follow District standard, edition 1' }));
  expect(screen.getByText('District standard, edition 1', { selector: 'li' })).toBeVisible();
  store.getState().undo();
  expect(await screen.findByText('This project follows none.')).toBeVisible();
  expect(store.getState().document.project.amendments).toEqual([]);
});

test('a device is preferred with its reason, and an opening is taken along as a template', async () => {
  const { user, store } = show(<Both />, project);
  const form = screen.getByRole('form', { name: 'Prefer a device' });
  await user.click(within(form).getByRole('button', { name: 'Prefer this device' }));
  expect(within(form).getByRole('alert')).toHaveTextContent('Choose the device');
  await user.selectOptions(within(form).getByLabelText('Device'), 'strikeMortise');
  await user.type(within(form).getByLabelText('Why'), 'Stocked in the shop.');
  await user.click(within(form).getByRole('button', { name: 'Prefer this device' }));
  expect(store.getState().document.project.weights.preferred).toEqual({
    strikeMortise: { points: 2, says: 'Stocked in the shop.' },
  });
  expect(screen.getByText(/2 points: Stocked in the shop\./)).toBeVisible();
  const standard = screen.getByRole('form', { name: 'Save this project’s standard' });
  await user.type(within(standard).getByLabelText('Name of the standard'), 'District');
  await user.type(within(standard).getByLabelText('Edition'), '1');
  await user.type(within(standard).getByLabelText('Openings to take along as templates'), '999');
  await user.click(within(standard).getByRole('button', { name: /^Save/ }));
  expect(within(standard).getByRole('status')).toHaveTextContent('There is no opening 999');
});

function Both() {
  return (
    <>
      <PreferredDevices project={useApp((state) => state.document.project)} />
      <Page />
    </>
  );
}

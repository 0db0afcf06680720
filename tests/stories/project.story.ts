import { expect, test } from 'playwright/test';
import { openingPage } from './pages/opening.ts';
import { projectPage } from './pages/project.ts';
import { newWindow } from './pages/window.ts';

test('a reviewer takes an older edition as the basis, and an opening cites the section of that edition', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  const opening = openingPage(page);
  const project = projectPage(page);
  await page.goto('#/opening/opening-103');
  await expect(opening.decision).toContainText(/IBC 2021 1010\.2/);
  await project.open();
  await project.chooseEdition('IBC', '2018');
  await expect(project.basisMeans).toContainText('IBC 2018');
  await page.goto('#/opening/opening-103');
  await expect(opening.decision).toContainText(/IBC 2018 1010\.1/);
  await expect(opening.decision).not.toContainText('IBC 2021');
});

test('with two codes adopted the page says that the stricter governs', async ({ context }) => {
  const { page } = await newWindow(context);
  const project = projectPage(page);
  await project.open();
  await project.chooseEdition('NFPA 101', '2021');
  await expect(project.basisMeans).toContainText('the stricter of the two governs');
});

test('a floor that things stand on stays, and the page says what stands there', async ({ context }) => {
  const { page } = await newWindow(context);
  const project = projectPage(page);
  await project.open();
  const floors = project.part('Floors');
  await floors.getByRole('button', { name: 'Remove Ground floor' }).click();
  await expect(floors.getByRole('alert')).toContainText('cannot be removed while something stands on it');
  await floors.getByRole('textbox', { name: 'New floor, above the others' }).fill('Attic');
  await floors.getByRole('button', { name: 'Add floor' }).click();
  await floors.getByRole('button', { name: 'Remove Attic' }).click();
  await expect(floors.getByRole('button', { name: 'Remove Attic' })).toHaveCount(0);
});

test('an amendment of the city tells how many openings it touches before it is added', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  const project = projectPage(page);
  await project.open();
  const part = project.part('Local amendments');
  await part.getByRole('button', { name: 'New amendment' }).click();
  const form = part.getByRole('form', { name: 'Local amendment' });
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(form).toContainText('Name the ordinance or letter');
  await form
    .getByRole('textbox', { name: /What it requires/ })
    .fill('Every stair door is shown to the fire marshal.');
  await form.getByRole('textbox', { name: /Ordinance/ }).fill('Letter of the fire marshal, 3 May');
  await form.getByRole('button', { name: 'Add a condition' }).click();
  await form.getByRole('combobox', { name: 'Condition 1: question' }).selectOption({ label: 'Egress role' });
  await form
    .getByRole('combobox', { name: 'Condition 1: answer' })
    .selectOption({ label: 'Door into an exit stair' });
  await expect(form.getByRole('status')).toContainText(/hold at [1-9]\d* of \d+ openings/);
  await form.getByRole('button', { name: 'Add', exact: true }).click();
  await expect(part.getByRole('article')).toContainText('Every stair door is shown to the fire marshal.');
});

import { expect, test } from 'playwright/test';
import { openFile } from './pages/files.ts';
import { newWindow } from './pages/window.ts';

/** Two surveyors, one building: each has a copy in a browser of their own, and nothing is replaced in silence. */
test('two copies are merged: new doors come in, a disagreement is shown, decided, and taken back', async ({
  browser,
}) => {
  const [atDesk, onPhone] = [await browser.newContext(), await browser.newContext()];
  const desk = await newWindow(atDesk);
  const phone = await newWindow(onPhone);
  await desk.addOpening('MG-1');
  await desk.page.goto('#/files');
  await phone.page.goto('#/files');
  await openFile(phone.page, await desk.saveCopy());
  await expect(phone.page.getByRole('region', { name: 'The project is here already' })).toBeVisible();
  await phone.page.getByRole('button', { name: 'Replace the project, keep a backup' }).click();
  await expect(phone.page.getByText('took the place of the project')).toBeVisible();

  // Both go on by themselves: one new door each, and a different name for the building.
  await desk.addOpening('MG-DESK');
  await phone.addOpening('MG-PHONE');
  for (const [window, name] of [
    [desk, 'House at the desk'],
    [phone, 'House on the phone'],
  ] as const) {
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    await window.page.goto('#/project');
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    await window.page.getByLabel('Name of the project').fill(name);
    // oxlint-disable-next-line no-await-in-loop -- one after the other
    await window.page.getByLabel('Name of the project').press('Tab');
  }
  await phone.page.goto('#/files');
  await desk.page.goto('#/files');
  await openFile(desk.page, await phone.saveCopy());

  const meeting = desk.page.getByRole('region', { name: 'The project is here already' });
  await expect(meeting).toContainText('Nothing has changed yet');
  await expect(meeting).toContainText('Opening MG-PHONE: comes in from the file.');
  await expect(meeting).toContainText('Opening MG-DESK: stays.');
  const row = meeting.getByRole('row').filter({ hasText: 'House on the phone' });
  await expect(row).toContainText('House at the desk');
  await expect(row).toContainText('both are kept until you decide');
  await meeting.getByRole('button', { name: 'Merge the file into the project' }).click();

  const open = desk.page.getByRole('list', { name: 'Differences to decide' });
  await open.getByRole('button', { name: /use House on the phone/ }).click();
  await expect(desk.page.getByText('Nothing waits for a decision')).toBeVisible();
  await desk.find('MG-');
  await expect(desk.row('MG-PHONE')).toBeVisible();
  await expect(desk.row('MG-DESK')).toBeVisible();

  // One step back asks again, one more is before the merge.
  await desk.page.getByRole('button', { name: 'Undo' }).click();
  await desk.page.getByRole('button', { name: 'Undo' }).click();
  await expect(desk.row('MG-PHONE')).toHaveCount(0);
  await expect(desk.row('MG-DESK')).toBeVisible();
  await atDesk.close();
  await onPhone.close();
});

test('a file of a project that is here can be opened as a separate copy, or left closed', async ({
  context,
}) => {
  const window = await newWindow(context);
  await window.page.goto('#/files');
  const copy = await window.saveCopy();
  await window.addOpening('MG-9');
  await window.page.goto('#/files');
  await openFile(window.page, copy);
  await window.page.getByRole('button', { name: 'Leave the file closed' }).click();
  await window.find('MG-9');
  await expect(window.row('MG-9')).toBeVisible();
  await window.page.goto('#/files');
  await openFile(window.page, copy);
  await window.page.getByRole('button', { name: 'Open as a separate copy' }).click();
  await expect(window.page.getByText('opened as a separate project')).toBeVisible();
  await window.find('MG-9');
  await expect(window.row('MG-9')).toHaveCount(0);
});

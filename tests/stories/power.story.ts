import { expect, test } from 'playwright/test';
import { newWindow } from './pages/window.ts';

test.setTimeout(150_000);

test('an electrician places a closet and a supply, assigns a run, and reads drop, battery and takeoff', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  await page.goto('#/power');
  const closets = page.getByRole('region', { name: 'Closets and supplies' });
  await closets.getByRole('button', { name: 'New closet' }).click();
  const form = closets.getByRole('form', { name: 'Closet' });
  await form.getByLabel('Lowest temperature').fill('warm');
  await form.getByRole('button', { name: 'Add' }).click();
  // What cannot be read is said at its field, and nothing is kept.
  await expect(form.getByRole('alert').first()).toBeVisible();
  await form.getByLabel('Name').fill('IDF attic');
  await form.getByLabel('Lowest temperature').fill('10');
  await form.getByRole('button', { name: 'Add' }).click();
  const attic = closets.getByRole('region', { name: 'IDF attic' });
  await attic.getByRole('button', { name: 'New supply in IDF attic' }).click();
  const supply = attic.getByRole('form', { name: 'Supply' });
  const fields = { Name: 'PS-A-1', Output: '24', Rating: '6', Outputs: '12', 'Battery that is there': '7' };
  for (const [label, value] of Object.entries(fields))
    await supply.getByRole('textbox', { name: label, exact: true }).fill(value);
  await supply.getByRole('button', { name: 'Add' }).click();
  await expect(attic).toContainText('PS-A-1');

  const runs = page.getByRole('region', { name: 'Runs', exact: true });
  await runs.getByText(/^IDF roof: \d+$/).click();
  await runs.getByLabel('Supply of R01').selectOption({ label: 'PS-A-1' });
  // The run hangs in the new closet now, and moved there.
  await runs.getByText(/^IDF attic: 1$/).click();
  const length = runs.getByLabel('Run of R01, feet one way');
  await length.fill('-40');
  await length.press('Enter');
  await expect(runs.getByRole('row').filter({ has: page.getByRole('link', { name: 'R01' }) })).toContainText(
    /must|cannot|below/i,
  );
  await length.fill('60');
  await length.press('Enter');
  const row = runs.getByRole('row').filter({ has: page.getByRole('link', { name: 'R01' }) });
  await expect(row).toContainText(/\d+ AWG/);
  await expect(row).toContainText(/\d\.\d\d V \(20 °C/);
  await expect(attic).toContainText(/÷ 0\.85 \(10 °C\)/);
  await expect(attic).toContainText(/next size [\d.]+ Ah; 7 Ah there; lasts about/);
  const takeoff = page.getByRole('region', { name: 'Takeoff' });
  await takeoff.getByText('IDF attic').click();
  await expect(takeoff).toContainText(/22 AWG, 6 conductors, shielded: 73 ft/);

  // The closet goes; what it fed is named and kept.
  await attic.getByRole('button', { name: 'Remove IDF attic' }).click();
  await expect(attic.getByRole('alert')).toContainText('R01');
  await attic.getByRole('button', { name: 'Remove all the same IDF attic' }).click();
  const found = page.getByRole('region', { name: 'What was found' });
  await expect(found).toContainText(
    'PS-A-1: its closet is no longer in the project, and it still feeds R01.',
  );
});

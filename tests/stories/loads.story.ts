import { expect, test } from 'playwright/test';
import { openingPage } from './pages/opening.ts';
import { printPage } from './pages/print.ts';
import { projectPage } from './pages/project.ts';
import { test as looking } from './pages/reader.ts';
import { newWindow } from './pages/window.ts';

test('a surveyor types use and area of a room, sees load and ways out, and the door of the room takes the load over', async ({
  context,
}) => {
  const { page } = await newWindow(context);
  const project = projectPage(page);
  const opening = openingPage(page);
  await project.open();
  const spaces = project.part('Spaces');
  await spaces.getByRole('button', { name: 'Edit Elevator machine room' }).click();
  const form = spaces.locator('form');
  await form.getByRole('combobox', { name: 'Use of the floor' }).selectOption({ label: 'Classroom' });
  await form.getByRole('textbox', { name: 'Floor area' }).fill('104 m²');
  await form.getByRole('textbox', { name: 'Occupant load' }).fill('');
  await expect(form.getByRole('status')).toHaveText('Load: 56 people, worked out from use and area.');
  await form.getByRole('button', { name: 'Keep' }).click();
  await expect(spaces.getByRole('row', { name: /^Elevator machine room/ })).toContainText('56, worked out');

  await page.goto('#/building');
  const loads = page.getByRole('region', { name: 'Loads and exits' });
  const row = loads.getByRole('row', { name: /^Elevator machine room/ });
  await expect(row).toContainText('56 worked out');
  await expect(row).toContainText('56 people need 2 exits; 1 is found (R04).');
  await row.getByRole('button', { name: 'Elevator machine room' }).click();
  await expect(loads).toContainText('1,119.45 ft² ÷ 20 ft² a person (Classroom, net floor) = 56 people.');
  await loads.getByRole('link', { name: 'R04', exact: true }).click();

  await expect(page.getByRole('heading', { level: 1, name: 'R04', exact: true })).toBeVisible();
  await page.getByRole('link', { name: 'Loads and exits of Elevator machine room' }).click();
  await expect(loads.getByRole('button', { name: 'Elevator machine room' })).toHaveAttribute(
    'aria-expanded',
    'true',
  );
  await page.goBack();
  // Nobody gave this door a load of its own once this one is taken out.
  await opening.group('Egress');
  await opening.type('Occupant load served', '');
  await expect(
    opening.says('Assumed: 56 people — from the plan: the load of Elevator machine room'),
  ).toBeAttached();
});

looking(
  'a reviewer prints loads and exits, every space with its load and what was found',
  async ({ page }) => {
    looking.setTimeout(90_000);
    const print = printPage(page);
    await print.open();
    await print.choose('Loads and exits');
    const pages = await print.print();
    const text = pages.map((one) => one.text).join(' ');
    for (const one of pages) {
      expect(one.width).toBeGreaterThan(one.height);
      expect(one.text).toContain('WHAT WAS FOUND');
    }
    expect(text).toMatch(/Day-care room\s+16\s+given\s+2\s+1\s+166/);
    expect(text).toContain('Serious: 16 people need 2 exits; 1 is found (405).');
    expect(text).toContain('Not computed: stairs, travel distance');
  },
);

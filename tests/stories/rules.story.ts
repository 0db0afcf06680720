import { expect } from 'playwright/test';
import { lookAt, test } from './pages/reader.ts';
import { rulesPage } from './pages/rules.ts';

const title = 'No fail-safe strike on a fire-rated door';

test('somebody looks a rule up by its words and goes to an opening where it took part', async ({ page }) => {
  const rules = rulesPage(page);
  await lookAt(page, 'rules');
  await rules.search('fail-safe strike fire-rated');
  await rules.found(title).click();
  const rule = rules.rule(title);
  await expect(rule.getByRole('heading', { level: 3 })).toBeFocused();
  await expect(rule).toContainText('Not read in the code’s own text');
  await expect(rule).toContainText(/Triggered at \d+ openings/);
  await rules.firedAt(title, '108').click();
  await expect(page.getByRole('heading', { level: 1, name: '108', exact: true })).toBeVisible();
});

test('a copied link to a rule opens the manual at that rule', async ({ page }) => {
  await lookAt(page, 'rules/R-31');
  const rule = rulesPage(page).rule(title);
  await expect(rule.getByRole('heading', { level: 3 })).toBeFocused();
  await expect(page).toHaveURL(/#\/rules\/R-31$/);
});

test('the cases of a rule are judged as they are opened', async ({ page }) => {
  await lookAt(page, 'rules/R-31');
  const rule = rulesPage(page).rule(title);
  await rule.getByText(/^Its cases/).click();
  await expect(rule).toContainText(/All \d+ answer as expected/);
});

test('a rule that does not exist is said to be missing', async ({ page }) => {
  await lookAt(page, 'rules/R-9999');
  await expect(page.getByRole('alert')).toContainText('There is no rule R-9999');
});

import { expect, type Page } from 'playwright/test';

/** The page of one opening: survey and decision. */
export function openingPage(page: Page) {
  const survey = page.getByRole('region', { name: 'Survey' });
  const question = page.getByRole('region', { name: 'Next question' });
  const decision = page.getByRole('region', { name: 'Decision' });
  return {
    decision,
    question,
    open: async (mark: string) => {
      await page.goto('#/schedule');
      await page.getByRole('searchbox', { name: 'Find in every field' }).fill(mark);
      await page.getByRole('gridcell', { name: mark, exact: true }).click();
      await expect(page.getByRole('heading', { level: 1, name: mark, exact: true })).toBeVisible();
    },
    /** Answers the question that is asked now; true while one was asked that the surveyor can answer. */
    answerNext: async (answers: Readonly<Record<string, string>>) => {
      const done = question.getByText('Nothing more needs to be asked');
      const asked = question.locator('[data-fact]');
      await expect(done.or(asked)).toBeVisible();
      if (await done.isVisible()) return false;
      const fact = (await asked.getAttribute('data-fact')) ?? '';
      const answer = answers[fact];
      if (answer === undefined) throw new Error(`Nobody told this surveyor what to answer for ${fact}.`);
      const button = asked.getByRole('button', { name: answer, exact: true });
      if ((await button.count()) > 0) await button.click();
      else {
        await asked.getByRole('textbox').fill(answer);
        await asked.getByRole('textbox').press('Enter');
      }
      await expect(question.locator(`[data-fact="${fact}"]`)).toHaveCount(0);
      return true;
    },
    group: async (name: string) => {
      const group = survey
        .locator('.survey-group')
        .filter({ has: page.locator('summary', { hasText: new RegExp(`^\\s*${name}`) }) });
      if (!(await group.evaluate((element) => (element as HTMLDetailsElement).open))) {
        await group.locator('summary').first().click();
      }
    },
    type: async (label: string, text: string) => {
      const field = survey.getByRole('textbox', { name: label, exact: true });
      await field.fill(text);
      await field.press('Enter');
    },
    field: (label: string) => survey.getByRole('textbox', { name: label, exact: true }),
    pick: async (label: string, option: string) =>
      survey.getByRole('combobox', { name: label, exact: true }).selectOption({ label: option }),
    says: (text: string | RegExp) => survey.getByText(text),
  };
}

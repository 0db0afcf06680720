import { expect, type Page } from 'playwright/test';

/** A finger that counts: every tap, and every text that is typed as one. */
export class Finger {
  taps = 0;
  answers = 0;
  readonly page: Page;
  constructor(page: Page) {
    this.page = page;
  }
  start(): void {
    this.taps = 0;
    this.answers = 0;
  }
  async press(name: string | RegExp): Promise<void> {
    await this.page
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .tap();
    this.taps++;
  }
  async answer(name: string | RegExp): Promise<void> {
    const question = this.page.locator('[data-look], [data-fact]').first();
    const before = await question.textContent();
    await question
      .getByRole('button', { name, exact: typeof name === 'string' })
      .first()
      .tap();
    this.taps++;
    this.answers++;
    await expect(async () => {
      const now = this.page.locator('[data-look], [data-fact]');
      expect((await now.count()) === 0 ? '' : await now.first().textContent()).not.toBe(before);
    }).toPass({ timeout: 20_000, intervals: [20, 50, 100] });
  }
  /** A figure no button offers: typed, then given. */
  async figure(question: string, text: string): Promise<void> {
    await this.type(question, text);
    await this.answer('Answer');
  }
  async type(name: string, text: string): Promise<void> {
    await this.page.getByRole('textbox', { name, exact: true }).fill(text);
    this.taps++;
  }
}

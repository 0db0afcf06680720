import { screen, within } from '@testing-library/react';
import { expect, test, vi } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { allRules } from '../../domain/rules/all.ts';
import { casesOf } from '../../domain/rules/allCases.ts';
import RulesPage from './RulesPage.tsx';

test('a rule is found by its number, among the chapter it belongs to', async () => {
  const { user } = show(<RulesPage />, projectOf({}));
  await user.type(screen.getByLabelText('Search'), 'R-31');
  expect(await screen.findByRole('link', { name: /^R-31 / })).toHaveAttribute('href', '#/rules/R-31');
});

test('a word no rule contains finds nothing, and that is said', async () => {
  const { user } = show(<RulesPage />, projectOf({}));
  await user.type(screen.getByLabelText('Search'), 'zebra crossing');
  expect(await screen.findByText(/^No rule/)).toBeInTheDocument();
  expect(screen.queryByRole('link')).toBeNull();
});

test('a chapter opened shows every one of its rules, and the cases of a rule judged anew', async () => {
  const { user } = show(<RulesPage />, projectOf({}));
  await user.selectOptions(screen.getByLabelText('Chapter'), 'stairs');
  const rules = allRules.filter((rule) => rule.family === 'stairs');
  expect(document.querySelectorAll('article h3')).toHaveLength(rules.length);
  const [first] = rules;
  if (!first) throw new Error('There is no rule for stairs.');
  const article = document.getElementById(`rule-${first.id}`)?.closest('article');
  if (!article) throw new Error(`${first.id} is not shown.`);
  await user.click(within(article).getByText('Its cases'));
  const rows = await vi.waitFor(() => {
    const found = article.querySelectorAll('tbody tr');
    expect(found).toHaveLength(casesOf(first).length);
    return [...found];
  });
  for (const row of rows) expect(row).toHaveTextContent('as expected');
});

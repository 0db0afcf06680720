import { screen, within } from '@testing-library/react';
import { describe, expect, test } from 'vitest';
import { projectOf, show } from '../../../tests/screens/show.tsx';
import { known } from '../../domain/testing/facts.ts';
import { inSequence } from '../../domain/model/verdict.ts';
import ReviewPage from './ReviewPage.tsx';

/** One door of an interlock: a reviewer decides it, and what is chosen is provisional. */
async function opened() {
  const project = projectOf({
    '101': { wishInterlock: known(true), doorType: known('single'), leafMaterial: known('hollowMetal') },
  });
  const { user, store } = show(<ReviewPage />, project);
  await user.selectOptions(screen.getByLabelText('Grouped'), 'By opening');
  const entry = within(screen.getByRole('article', { name: '101' }));
  await user.click(entry.getByText('Review'));
  const log = () => inSequence(store.getState().document.project.verdicts);
  return { user, store, entry, log };
}
type Opened = Awaited<ReturnType<typeof opened>>;

async function fillIn({ user, entry }: Opened, verdict: string, reason: string) {
  await user.click(entry.getByRole('radio', { name: verdict }));
  await user.clear(entry.getByLabelText('By (name)'));
  await user.type(entry.getByLabelText('By (name)'), 'J. Reviewer');
  await user.clear(entry.getByLabelText('Role'));
  await user.type(entry.getByLabelText('Role'), 'Plan reviewer');
  if (reason !== '') await user.type(entry.getByLabelText(/^Reason/), reason);
}
const put = ({ user, entry }: Opened) => user.click(entry.getByRole('button', { name: 'File the verdict' }));

describe('a reviewer at the register', () => {
  test('is told what is missing, and the keyboard goes to the first field that lacks something', async () => {
    const at = await opened();
    await put(at);
    expect(at.entry.getByText('Choose what you decide.')).toBeInTheDocument();
    expect(at.entry.getByRole('radio', { name: 'Approve as it stands' })).toHaveFocus();
    await fillIn(at, 'Refuse', 'ok');
    await put(at);
    expect(at.entry.getByText(/this says nothing/)).toBeInTheDocument();
    expect(at.entry.getByLabelText(/^Reason/)).toHaveFocus();
    expect(at.log()).toEqual([]);
  });

  test('cannot approve what is provisional by a name alone', async () => {
    const at = await opened();
    await fillIn(at, 'Approve as it stands', '');
    await put(at);
    expect(at.entry.getByText(/^101: .*authority’s document/)).toBeInTheDocument();
    expect(at.log()).toEqual([]);
  });

  test('refuses, undo leaves it on file, and a withdrawal stands beside it', async () => {
    const at = await opened();
    await fillIn(at, 'Refuse', 'Only door of the room.');
    await put(at);
    expect(
      await at.entry.findByText('Refused by J. Reviewer, Plan reviewer, March 2, 2026'),
    ).toBeInTheDocument();
    expect(at.log()[0]?.hash).toMatch(/^[0-9a-f]{64}$/);
    at.store.getState().undo();
    expect(at.log()).toHaveLength(1);
    await at.user.click(at.entry.getByRole('button', { name: 'Withdraw, with a reason' }));
    const form = within(at.entry.getByRole('form', { name: 'Withdraw' }));
    await at.user.type(form.getByLabelText('Reason'), 'The drawing was superseded.');
    await at.user.clear(form.getByLabelText('By (name)'));
    await at.user.type(form.getByLabelText('By (name)'), 'J. Reviewer');
    await at.user.click(form.getByRole('button', { name: 'Withdraw this verdict' }));
    expect(await at.entry.findByText(/^Withdrawn by J. Reviewer, March 2, 2026: /)).toBeInTheDocument();
    expect(at.log().map(({ verdict }) => verdict)).toEqual(['refused', 'withdrawn']);
    expect(at.log()[1]?.previousHash).toBe(at.log()[0]?.hash);
  });

  test('sees which fact changed from what to what once the verdict is stale', async () => {
    const at = await opened();
    await fillIn(at, 'Pass to the authority', 'Ask about the interlock.');
    await put(at);
    await at.entry.findByText(/^Passed to the authority by J. Reviewer/);
    at.store
      .getState()
      .dispatch('Leaf', [
        { kind: 'setFact', id: '101', fact: 'leafMaterial', value: known('woodSolidCore') },
      ]);
    expect(
      await at.entry.findByText('Leaf material: hollow metal → wood, solid core; signed on hollow metal.'),
    ).toBeInTheDocument();
  });
});

test('one answer settles a question at every opening that is ticked, with exceptions', async () => {
  const door = { wishInterlock: known(true), doorType: known('single' as const) };
  const { user, store } = show(<ReviewPage />, projectOf({ '101': door, '102': door, '103': door }));
  const question = screen
    .getAllByRole('article')
    .find((one) => within(one).queryByText('Answer for all 3 openings') !== null);
  if (!question) throw new Error('No question is asked at all three doors.');
  const entry = within(question);
  await user.click(entry.getByRole('checkbox', { name: 'Sign 102' }));
  await user.click(entry.getByText('Answer for 2 of 3 openings, without 102'));
  await user.click(entry.getByRole('radio', { name: 'Refuse' }));
  await user.type(entry.getByLabelText('By (name)'), 'J. Reviewer');
  await user.type(entry.getByLabelText('Role'), 'Plan reviewer');
  await user.type(entry.getByLabelText(/^Reason/), 'No door of an interlock is shown.');
  await user.click(entry.getByRole('button', { name: 'File the verdict' }));
  await entry.findByText('The verdict is on file.');
  const [verdict] = Object.values(store.getState().document.project.verdicts);
  expect(verdict?.openingIds).toEqual(['101', '103']);
  expect(verdict?.questions).toHaveLength(1);
});

import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { countingIds, steppingClock } from '../../app/clock.ts';
import { createPreferences } from '../../app/preferences.ts';
import { createApp } from '../../app/session.ts';
import { known } from '../../domain/model/fact.ts';
import { newOpening, newProject } from '../../domain/model/newProject.ts';
import { createDatabase } from '../../storage/database.ts';
import { AppContext } from '../context.ts';
import ReviewPage from './ReviewPage.tsx';

/** One door of an interlock: a reviewer decides it. */
function startedApp() {
  const app = createApp({
    database: createDatabase(),
    clock: steppingClock('2026-03-02T12:00:00.000Z'),
    ids: countingIds(),
    locks: undefined,
    channel: () => undefined,
    preferences: createPreferences(undefined),
  });
  const opening = {
    ...newOpening('a', '101'),
    facts: {
      wishInterlock: known(true),
      doorType: known('single' as const),
      leafMaterial: known('hollowMetal' as const),
    },
    review: null,
  };
  app.store.getState().replaceProject({ ...newProject('p', 'House'), openings: { a: opening } });
  app.store.getState().setReady(true);
  return app;
}

async function opened() {
  const app = startedApp();
  render(
    <AppContext value={app}>
      <ReviewPage />
    </AppContext>,
  );
  const user = userEvent.setup();
  const entry = within(screen.getByRole('article', { name: '101' }));
  await user.click(entry.getByText('Review'));
  const review = () => app.store.getState().document.project.openings['a']?.review;
  return { app, user, entry, review };
}

describe('a reviewer at the register', () => {
  test('is told what is missing, and the keyboard goes to the first field that lacks something', async () => {
    const { user, entry, review } = await opened();
    await user.click(entry.getByRole('button', { name: 'File the review' }));
    expect(entry.getByText('Choose what you decide.')).toBeInTheDocument();
    expect(entry.getByRole('radio', { name: 'Approve as it stands' })).toHaveFocus();
    await user.click(entry.getByRole('radio', { name: 'Refuse' }));
    await user.type(entry.getByLabelText('By (name)'), 'J. Reviewer');
    await user.click(entry.getByRole('button', { name: 'File the review' }));
    expect(entry.getByText('Say why, so that it can be corrected.')).toBeInTheDocument();
    expect(entry.getByLabelText(/^Reason/)).toHaveFocus();
    expect(review()).toBeNull();
  });

  test('signs with today’s date, sees the mark, and takes it back', async () => {
    const { user, entry, review } = await opened();
    await user.click(entry.getByRole('radio', { name: 'Take to the authority' }));
    await user.type(entry.getByLabelText('By (name)'), 'J. Reviewer');
    await user.type(entry.getByLabelText(/^Reason/), 'Ask about the interlock.');
    await user.click(entry.getByRole('button', { name: 'File the review' }));
    expect(review()).toMatchObject({ verdict: 'toAhj', by: 'J. Reviewer', on: '2026-03-02' });
    expect(entry.getByText('With the authority by J. Reviewer, March 2, 2026')).toBeInTheDocument();
    await user.click(entry.getByRole('button', { name: 'Remove this review' }));
    expect(review()).toBeNull();
  });

  test('sees which fact changed from what to what once the mark is stale', async () => {
    const { app, user, entry } = await opened();
    await user.click(entry.getByRole('radio', { name: 'Approve as it stands' }));
    await user.type(entry.getByLabelText('By (name)'), 'J. Reviewer');
    await user.click(entry.getByRole('button', { name: 'File the review' }));
    app.store
      .getState()
      .dispatch('Leaf', [{ kind: 'setFact', id: 'a', fact: 'leafMaterial', value: known('woodSolidCore') }]);
    expect(
      await entry.findByText('Leaf material: was hollow metal, is wood, solid core.'),
    ).toBeInTheDocument();
  });
});

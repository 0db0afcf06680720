import { act, cleanup, within } from '@testing-library/react';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { show } from '../../tests/screens/show.tsx';
import { decisionsInBuilding } from '../app/buildings.ts';
import { stateWords } from '../domain/words/states.ts';
import { known } from '../domain/testing/facts.ts';
import type { Project } from '../domain/model/project.ts';
import { scheduleRows } from '../domain/schedules/openings.ts';
import { lobbyTrap, stairTrap } from '../domain/testing/smallBuilding.ts';
import OpeningPage from './opening/OpeningPage.tsx';
import ReviewPage from './review/ReviewPage.tsx';
import { decidedGrid } from './schedule/decidedGrid.ts';
import SchedulePage from './schedule/SchedulePage.tsx';
import WalkPage from './walk/WalkPage.tsx';

// The rows in sight are found by measuring, and jsdom measures nothing.
beforeAll(async () => {
  await decidedGrid.load();
  Object.defineProperties(HTMLElement.prototype, {
    clientHeight: { configurable: true, get: () => 600 },
    clientWidth: { configurable: true, get: () => 1000 },
    offsetHeight: { configurable: true, get: () => 48 },
  });
});

/** What each screen and sheet says of the state of one opening. */
const says: Record<string, (project: Project, id: string) => Promise<string | undefined>> = {
  grid: async (project, id) => {
    show(<SchedulePage />, project);
    return await found(`[data-opening="${id}"] [data-column="state"]`).then((cell) => cell.textContent);
  },
  'opening page': async (project, id) => {
    const { store } = show(<OpeningPage />, project);
    act(() => store.getState().select(id));
    return stateIn(await found('.decision-head'));
  },
  walk: async (project, id) => {
    const { store } = show(<WalkPage />, project);
    act(() => store.getState().select(id));
    return stateIn(await found('section[aria-label="Decision"]'));
  },
  schedule: (project, id) =>
    Promise.resolve(
      scheduleRows(project, decisionsInBuilding(project)).find((row) => row.openingId === id)?.stateWord,
    ),
};

/** By its selector: looking through a whole page by role takes seconds here. */
const found = (selector: string) =>
  vi.waitFor(() => {
    const element = document.querySelector(selector);
    if (!element) throw new Error(`${selector} is not there.`);
    return element;
  });

function stateIn(element: Element | null): string | undefined {
  const words: readonly string[] = Object.values(stateWords).map(({ word }) => word);
  return [...(element?.querySelectorAll('*') ?? [])]
    .map((one) => one.textContent.trim())
    .find((text) => words.includes(text));
}

const traps: Record<string, Project> = {
  'a lobby whose people have a locked door alone': lobbyTrap(),
  'a stair from which no floor can be entered again': stairTrap(),
};

describe.each(Object.entries(traps))('%s', (_name, project) => {
  test.each(Object.keys(says))('%s says of each door what the building check leaves of it', async (name) => {
    const decisions = decisionsInBuilding(project);
    // One that the building makes severe, and one that it leaves alone.
    const two = [...decisions].filter(
      ([, { state }], at, all) => all.findIndex(([, one]) => one.state === state) === at,
    );
    for (const [id, decision] of two) {
      expect(await says[name]?.(project, id), `${name}, ${id}`).toBe(stateWords[decision.state].word);
      cleanup();
    }
    const fromBuilding = [...decisions.values()].filter((one) =>
      one.severe.some(({ from }) => from === 'building'),
    );
    expect(fromBuilding.map(({ state }) => state)).toContain('severe');
  });
});

async function signOnOpeningPage(project: Project, id: string): Promise<Project> {
  const { store, user } = show(<OpeningPage />, project);
  act(() => store.getState().select(id));
  const fold = within((await found('section[aria-label="Review"]')) as HTMLElement);
  await user.click(fold.getByText(/^Review/));
  await user.click(fold.getByLabelText('Pass to the authority'));
  await user.click(fold.getByLabelText('By (name)'));
  await user.paste('J. Reviewer');
  await user.click(fold.getByLabelText('Role'));
  await user.paste('Plan reviewer');
  await user.click(fold.getByLabelText(/^(Reason|What the authority|Question)/));
  await user.paste('Ask about re-entry to this floor.');
  await user.click(fold.getByText('File the verdict'));
  await fold.findByText('The verdict is on file.');
  cleanup();
  return store.getState().document.project;
}

async function onRegister(project: Project, id: string) {
  const { user } = show(<ReviewPage />, project);
  const grouped = document.querySelector('select[aria-label="Grouped"]');
  if (grouped) await user.selectOptions(grouped, 'By opening');
  return within((await found(`article[aria-label="${id}"]`)) as HTMLElement);
}

describe('a review signed on the opening page', () => {
  test('is the review that the register shows as current', async () => {
    const signed = await signOnOpeningPage(stairTrap(), 'S-2');
    const entry = await onRegister(signed, 'S-2');
    expect(entry.getAllByText('With the authority').length).toBeGreaterThan(0);
    expect(entry.queryByText(/Stale/)).toBeNull();
  });

  test('is stale once another door makes a trap of the building, and says which', async () => {
    const trap = stairTrap();
    const [second, third] = [trap.openings['S-2'], trap.openings['S-3']];
    if (!second || !third) throw new Error('The stair has lost its doors.');
    const passage = { ...third, facts: { ...third.facts, lockFunction: known('passage' as const) } };
    const sound: Project = { ...trap, openings: { ...trap.openings, 'S-3': passage } };
    const signed = await signOnOpeningPage(sound, 'S-2');
    const later: Project = { ...signed, openings: { ...signed.openings, 'S-3': third } };
    const entry = await onRegister(later, 'S-2');
    expect(entry.getAllByText(/^Stale/).length).toBeGreaterThan(0);
    expect(entry.getByText(/^Found in the building since: Stair/)).toBeInTheDocument();
  });
});

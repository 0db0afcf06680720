import { render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ReactNode } from 'react';
import { countingIds, steppingClock } from '../../src/app/testing/clock.ts';
import { createPreferences } from '../../src/app/preferences.ts';
import type { App } from '../../src/app/session/app.ts';
import { createApp } from '../../src/app/session.ts';
import type { Facts } from '../../src/domain/model/fact.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { createDatabase } from '../../src/storage/database.ts';
import { createDraftBox } from '../../src/storage/drafts.ts';
import { memoryKeeper } from '../../src/storage/testing/fakes.ts';
import { fakeShrink } from './pictures.ts';
import { AppContext } from '../../src/ui/context.ts';

/** For tests of screens: a project of openings by mark, whose ids are their marks. */
export function projectOf(openings: Readonly<Record<string, Facts>>): Project {
  const entries = Object.entries(openings).map(([mark, facts]): [string, Opening] => [
    mark,
    { ...newOpening(mark, mark), facts },
  ]);
  return { ...newProject('p', 'House'), openings: Object.fromEntries(entries) };
}

/** For tests of screens: an app that has opened a project, and the user in front of it. */
export function show(screen: ReactNode, project: Project, other: Partial<App> = {}, box = memoryKeeper()) {
  const started = createApp({
    database: createDatabase(),
    clock: steppingClock('2026-03-02T12:00:00.000Z'),
    ids: countingIds(),
    locks: undefined,
    channel: () => undefined,
    preferences: createPreferences(undefined),
    drafts: createDraftBox(box),
    // The page has no canvas; pictures are taken as small already.
    shrink: fakeShrink,
  });
  started.store.getState().replaceProject(project);
  started.store.getState().setReady(true);
  const app = { ...started, ...other };
  const view = render(<AppContext value={app}>{screen}</AppContext>);
  return { app, view, user: userEvent.setup(), store: started.store };
}

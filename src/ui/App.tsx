import { Suspense, useEffect } from 'react';
import type { App as Application } from '../app/session/app.ts';
import { ahead } from '../app/session/ahead.ts';
import { useAppState } from '../app/useAppState.ts';
import { type PageId, pageWords } from '../domain/manual/pages.ts';
import { AppContext, useApp } from './context.ts';
import { AddressBar } from './frame/AddressBar.tsx';
import { helpSheet } from './frame/HelpButton.tsx';
import { Masthead } from './frame/Masthead.tsx';
import { Tour } from './frame/Tour.tsx';
import { lazyPage, type LazyPage, loadAll } from './frame/lazyPage.ts';
import { ErrorPanel } from './parts/ErrorPanel.tsx';
import { ParkedDrafts } from './parts/ParkedDrafts.tsx';
import { Notices } from './parts/Tell.tsx';
import { decidedGrid } from './schedule/decidedGrid.ts';

const pages: Record<PageId, LazyPage> = {
  schedule: lazyPage(() => import('./schedule/SchedulePage.tsx')),
  opening: lazyPage(() => import('./opening/OpeningPage.tsx')),
  walk: lazyPage(() => import('./walk/WalkPage.tsx')),
  plan: lazyPage(() => import('./plan/PlanPage.tsx')),
  project: lazyPage(() => import('./project/ProjectPage.tsx')),
  review: lazyPage(() => import('./review/ReviewPage.tsx')),
  building: lazyPage(() => import('./building/BuildingPage.tsx')),
  pricing: lazyPage(() => import('./pricing/PricingPage.tsx')),
  power: lazyPage(() => import('./power/PowerPage.tsx')),
  print: lazyPage(() => import('./print/PrintPage.tsx')),
  rules: lazyPage(() => import('./rules/RulesPage.tsx')),
  files: lazyPage(() => import('./files/FilesPage.tsx')),
  legend: lazyPage(() => import('./legend/LegendPage.tsx')),
};

/** Everything that is not loaded with the first page. */
const later = [decidedGrid.load, ...Object.values(pages).map(({ load }) => load), helpSheet.load, ...ahead];

export function App({ app }: { app: Application }) {
  const busy = useAppState(app.store, (state) => state.session.busy);
  return (
    <AppContext value={app}>
      <AddressBar />
      <a className="skip-link" href="#main">
        To the content
      </a>
      <Masthead />
      <Tour />
      <Notices />
      <ParkedDrafts />
      <main id="main" tabIndex={-1} inert={busy} aria-busy={busy}>
        <CurrentPage />
      </main>
    </AppContext>
  );
}

function CurrentPage() {
  const page = useApp((state) => state.session.page);
  const ready = useApp((state) => state.session.ready);
  const { Page, load } = pages[page];
  useEffect(() => {
    // While the project is opened, so that the one need not wait for the other; what fails is fetched again below.
    if (!ready) void load().catch(() => undefined);
  }, [ready, load]);
  useEffect(() => (ready ? loadAll(later) : undefined), [ready]);
  if (!ready) return <p className="sheet-body lead">Opening the project…</p>;
  return (
    <ErrorPanel key={page} name={pageWords[page].name}>
      <Suspense fallback={<p className="sheet-body">Loading…</p>}>
        <Page />
      </Suspense>
    </ErrorPanel>
  );
}

import { Suspense, useEffect } from 'react';
import { addressOf, routeOf } from '../app/route.ts';
import type { App as Application } from '../app/session.ts';
import { useAppState } from '../app/useAppState.ts';
import type { PageId } from '../domain/manual/pages.ts';
import { AppContext, useApp, useStore } from './context.ts';
import { Masthead } from './frame/Masthead.tsx';
import { Tour } from './frame/Tour.tsx';
import { lazyPage, type LazyPage, loadAll } from './frame/lazyPage.ts';
import { ErrorPanel } from './parts/ErrorPanel.tsx';
import { ParkedDrafts } from './parts/ParkedDrafts.tsx';
import { Notices } from './parts/Tell.tsx';

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

const pageNames: Record<PageId, string> = {
  schedule: 'Schedule',
  opening: 'Opening',
  walk: 'Walk',
  plan: 'Floor plan',
  project: 'Project',
  review: 'Review',
  building: 'Building',
  pricing: 'Pricing',
  power: 'Power',
  print: 'Print',
  rules: 'Rules',
  files: 'Files',
  legend: 'Legend',
};

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

/** Keeps address and state in step, so Back and a copied link work. */
function AddressBar() {
  const store = useStore();
  const page = useApp((state) => state.session.page);
  const openingId = useApp((state) => state.session.selectedId);
  const projectName = useApp((state) => state.document.project.name);
  const mark = useApp((state) =>
    openingId === null ? '' : (state.document.project.openings[openingId]?.mark ?? ''),
  );
  useEffect(() => {
    const follow = () => {
      if (location.hash === '#main') return;
      const route = routeOf(location.hash);
      const { goTo, select, session } = store.getState();
      const named = route.page === 'opening' || (route.page === 'walk' && route.openingId !== null);
      if (named && route.openingId !== session.selectedId) select(route.openingId);
      if (route.page !== session.page) goTo(route.page);
    };
    follow();
    addEventListener('hashchange', follow);
    return () => removeEventListener('hashchange', follow);
  }, [store]);
  useEffect(() => {
    // The address led elsewhere a moment ago; writing the old page now would lose what it names besides the page.
    if (store.getState().session.page !== page) return;
    const here = routeOf(location.hash);
    // The rules page keeps the rule it shows in its own address.
    const carriesId = page === 'opening' || page === 'walk';
    const inStep = here.page === page && (!carriesId || here.openingId === openingId);
    if (!inStep) location.hash = addressOf({ page, openingId: carriesId ? openingId : null });
    const parts =
      page === 'opening' && mark ? [mark] : page === 'walk' ? [pageNames.walk, mark] : [pageNames[page]];
    document.title = [...parts, projectName, 'Latchward'].filter(Boolean).join(' — ');
  }, [store, page, openingId, projectName, mark]);
  return null;
}

function CurrentPage() {
  const page = useApp((state) => state.session.page);
  const ready = useApp((state) => state.session.ready);
  const { Page, load } = pages[page];
  useEffect(() => {
    // While the project is opened, so that the one need not wait for the other; what fails is fetched again below.
    if (!ready) void load().catch(() => undefined);
  }, [ready, load]);
  useEffect(() => (ready ? loadAll(Object.values(pages)) : undefined), [ready]);
  if (!ready) return <p className="sheet-body lead">Opening the project…</p>;
  return (
    <ErrorPanel key={page} name={pageNames[page]}>
      <Suspense fallback={<p className="sheet-body">Loading…</p>}>
        <Page />
      </Suspense>
    </ErrorPanel>
  );
}

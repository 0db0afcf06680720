import { useEffect } from 'react';
import { moveTo, namesOpening, routeOf } from '../../app/addresses.ts';
import { type PageId, pageWords } from '../../domain/manual/pages.ts';
import { useApp, useStore } from '../context.ts';

/** Keeps address and state in step, so Back and a copied link work. */
export function AddressBar() {
  const store = useStore();
  const page = useApp((state) => state.session.page);
  const projectName = useApp((state) => state.document.project.name);
  const mark = useApp(({ session: { selectedId }, document }) =>
    selectedId === null ? '' : (document.project.openings[selectedId]?.mark ?? ''),
  );
  useEffect(() => {
    const follow = () => {
      if (location.hash === '#main') return;
      const { page: to, name } = routeOf(location.hash);
      const { visit, session } = store.getState();
      visit(to, namesOpening(to) && name !== '' ? name : session.selectedId);
    };
    follow();
    addEventListener('hashchange', follow);
    // In the turn in which the app moved. Written any later, it could take back a link pressed in between.
    const stop = store.subscribe(({ session: now }, { session: before }) => {
      if (now.page !== before.page || now.selectedId !== before.selectedId) write(now.page, now.selectedId);
    });
    return () => {
      removeEventListener('hashchange', follow);
      stop();
    };
  }, [store]);
  useEffect(() => {
    const { name } = pageWords[page];
    const parts = page === 'opening' && mark ? [mark] : page === 'walk' ? [name, mark] : [name];
    document.title = [...parts, projectName, 'Latchward'].filter(Boolean).join(' — ');
  }, [page, projectName, mark]);
  return null;
}

/** The rules page keeps the rule it shows in its own address; what the address names besides the page stays. */
function write(page: PageId, openingId: string | null): void {
  const here = routeOf(location.hash);
  if (!namesOpening(page)) {
    if (here.page !== page) moveTo(page);
  } else if (here.page !== page || here.name !== (openingId ?? '')) moveTo(page, openingId ?? '');
}

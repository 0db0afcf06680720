import { useSyncExternalStore } from 'react';
import { routeOf } from '../../app/addresses.ts';

function subscribe(onChange: () => void): () => void {
  addEventListener('hashchange', onChange);
  return () => removeEventListener('hashchange', onChange);
}

/** What an address names on its page, as the Rules page a rule; empty for the page as a whole. */
export function useNameInAddress(page: 'rules' | 'building'): string {
  return useSyncExternalStore(subscribe, () => {
    const here = routeOf(location.hash);
    return here.page === page ? here.name : '';
  });
}

import { useSyncExternalStore } from 'react';

function subscribe(onChange: () => void): () => void {
  addEventListener('hashchange', onChange);
  return () => removeEventListener('hashchange', onChange);
}

/** What an address names on its page, as the rule in `#/rules/R-31`; empty for the page as a whole. */
export function useNameInAddress(page: 'rules' | 'building'): string {
  return useSyncExternalStore(subscribe, () => {
    const found = new RegExp(`^#/${page}/([^/]+)$`).exec(location.hash)?.[1] ?? '';
    try {
      return decodeURIComponent(found);
    } catch {
      return found;
    }
  });
}

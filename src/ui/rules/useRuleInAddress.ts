import { useSyncExternalStore } from 'react';

function subscribe(onChange: () => void): () => void {
  addEventListener('hashchange', onChange);
  return () => removeEventListener('hashchange', onChange);
}

/** The rule that `#/rules/R-31` names; empty for the manual as a whole. */
function ruleInAddress(): string {
  const found = /^#\/rules\/([^/]+)$/.exec(location.hash)?.[1] ?? '';
  try {
    return decodeURIComponent(found);
  } catch {
    return found;
  }
}

export function useRuleInAddress(): string {
  return useSyncExternalStore(subscribe, ruleInAddress);
}

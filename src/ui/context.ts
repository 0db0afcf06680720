import { createContext, useContext } from 'react';
import type { App } from '../app/session/app.ts';
import type { AppState, AppStore } from '../app/store.ts';
import { useAppState } from '../app/useAppState.ts';

export const AppContext = createContext<App | null>(null);

/** The application behind the screens: store, files, projects. */
export function useApplication(): App {
  const app = useContext(AppContext);
  if (app === null) throw new Error('A component of a screen stands outside the app.');
  return app;
}

export function useStore(): AppStore {
  return useApplication().store;
}

/** Reads one part of the state; the selector must return the same object while nothing changed. */
export function useApp<T>(selector: (state: AppState) => T): T {
  return useAppState(useStore(), selector);
}

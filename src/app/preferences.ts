import { browserKeeper, type LocalKeeper } from '../storage/localKeeper.ts';

/**
 * Small settings of this browser. They live in localStorage, which may be full, blocked or wiped at any time:
 * nothing of a project may ever be kept among them.
 */
export interface Preferences {
  /** Stands as the author of every edit. */
  readonly yourName: string;
  /** Fill the form of a reviewer. */
  readonly yourRole: string;
  readonly yourFirm: string;
  readonly yourLicense: string;
  /** Opened again at the next start. */
  readonly lastProjectId: string;
  /** The look of the screens: '' follows the system, else light, dark or sunlight. */
  readonly look: string;
  /** 'yes' once the first-run tour was ended or skipped. */
  readonly tourSeen: string;
  /** How the walk asks: '' goes round the door, 'shortest' asks the fewest questions. */
  readonly walkOrder: string;
  /** What columns of door schedules were taken for by hand, as JSON by heading. */
  readonly columnsByHand: string;
  /** What words of door schedules were said to mean, as JSON by column and word. */
  readonly wordsByHand: string;
  /** How the schedule was looked at last and the views saved by name, as JSON by project. */
  readonly gridViews: string;
}

type PreferenceKey = keyof Preferences;
type Keeper = Pick<LocalKeeper, 'getItem' | 'setItem'>;

const prefix = 'latchward.';

export interface PreferenceBox {
  readonly get: (key: PreferenceKey) => string;
  readonly set: (key: PreferenceKey, value: string) => void;
}

/** A blocked or full localStorage costs the memory of a setting, never the app: values then last until reload. */
export function createPreferences(keeper: Keeper | undefined = browserKeeper()): PreferenceBox {
  const here = new Map<PreferenceKey, string>();
  return {
    get: (key) => {
      const fresh = here.get(key);
      if (fresh !== undefined) return fresh;
      try {
        return keeper?.getItem(prefix + key) ?? '';
      } catch {
        return '';
      }
    },
    set: (key, value) => {
      here.set(key, value);
      try {
        keeper?.setItem(prefix + key, value);
      } catch {
        // Kept for this visit only.
      }
    },
  };
}

import type { SetAside } from '../domain/model/project.ts';
import type { Position } from '../storage/copy/position.ts';
import type { FromCopy } from './wholeCopy.ts';

/** What the project on the screen stands on. */
export type Base =
  /** The database holds it up to this state, as this window last read or wrote it. */
  | { readonly kind: 'stored'; readonly at: Position }
  /** Nothing of it is in the database yet. */
  | { readonly kind: 'new' }
  /** It came out of its second copy, and the database has not taken it back. */
  | ({ readonly kind: 'detached' } & Pick<FromCopy, 'path' | 'done'>)
  /** It stands in for what the database does not give. */
  | { readonly kind: 'standIn' };

/** Where the project on the screen stands between memory, database and second copy. */
export interface Standing {
  readonly base: Base;
  /** The state on the screen: one further with every edit accepted. */
  readonly now: Position;
  /** Damaged parts that the user has not dealt with. */
  readonly setAside: readonly SetAside[];
}

export type StandingEvent =
  | { readonly kind: 'opened'; readonly at: Position; readonly setAside: readonly SetAside[] }
  | ({
      readonly kind: 'openedFromCopy';
      readonly at: Position;
      readonly setAside: readonly SetAside[];
      /** False where it is only shown: the database is then no question of this window. */
      readonly writes: boolean;
    } & Pick<FromCopy, 'path' | 'done'>)
  | { readonly kind: 'startedNew'; readonly setAside: readonly SetAside[] }
  | { readonly kind: 'standsIn' }
  /** An edit was accepted, or the project changed by something that is no edit; `tip` names it. */
  | { readonly kind: 'changed'; readonly tip: string }
  | { readonly kind: 'saved'; readonly at: Position }
  /** The database answered: it holds this state of the project, or nothing. */
  | { readonly kind: 'rejoined'; readonly stored: Position | null }
  /** The stored project is gone and is to be stored anew. */
  | { readonly kind: 'storedGone' }
  | { readonly kind: 'setAsideForgotten' };

const nowhere: Position = { revision: 0, tip: '' };

export const atFirst: Standing = { base: { kind: 'new' }, now: nowhere, setAside: [] };

/** The only way a standing changes. An event that cannot happen in a state leaves it as it is. */
export function step(standing: Standing, event: StandingEvent): Standing {
  switch (event.kind) {
    case 'opened':
      return { base: { kind: 'stored', at: event.at }, now: event.at, setAside: event.setAside };
    case 'openedFromCopy': {
      const { path, done, at, setAside, writes } = event;
      return { base: writes ? { kind: 'detached', path, done } : { kind: 'new' }, now: at, setAside };
    }
    case 'startedNew':
      return { base: { kind: 'new' }, now: nowhere, setAside: event.setAside };
    case 'standsIn':
      return standing.base.kind === 'new' ? { ...standing, base: { kind: 'standIn' } } : standing;
    case 'changed':
      return { ...standing, now: { revision: standing.now.revision + 1, tip: event.tip } };
    case 'saved':
      // Until the database has said what it holds, nothing counts as saved in it.
      return standing.base.kind === 'detached'
        ? standing
        : { ...standing, base: { kind: 'stored', at: event.at } };
    case 'rejoined':
      if (standing.base.kind !== 'detached') return standing;
      return { ...standing, base: event.stored ? { kind: 'stored', at: event.stored } : { kind: 'new' } };
    case 'storedGone':
      return { ...standing, base: { kind: 'new' } };
    case 'setAsideForgotten':
      return { ...standing, setAside: [] };
  }
}

/** What the database is known to hold; null where it holds nothing of the project, or is not known to. */
export const storedAt = ({ base }: Standing): Position | null => (base.kind === 'stored' ? base.at : null);

import type { Project } from '../../domain/model/project.ts';
import type { Journal } from '../../storage/copy/journal.ts';
import type { KnownProjects } from '../../storage/copy/known.ts';
import type { SecondCopy } from '../../storage/copy/secondCopy.ts';
import { type Result, storageProblemInWords } from '../../storage/problems.ts';
import type { ProjectStore } from '../../storage/projectStore.ts';
import type { Clock, NewId } from '../clock.ts';
import type { DraftDesk } from '../draftDesk.ts';
import type { PhotoDesk } from '../photoDesk.ts';
import type { PreferenceBox } from '../preferences.ts';
import type { AppStore } from '../store.ts';
import type { StandingBox } from './standingBox.ts';

/** What every part of the session works with. */
export interface Kit {
  readonly clock: Clock;
  readonly ids: NewId;
  readonly store: AppStore;
  readonly preferences: PreferenceBox;
  readonly drafts: DraftDesk;
  readonly photos: PhotoDesk;
  readonly projects: ProjectStore;
  readonly copies: SecondCopy;
  readonly journal: Journal;
  readonly known: KnownProjects;
  readonly standing: StandingBox;
  /** The project on the screen. */
  readonly shown: () => Project;
  /** Nothing for an empty sentence. */
  readonly tellProblem: (says: string) => void;
  /** Calls that change which project is shown wait for one another. */
  readonly inTurn: <T>(work: () => Promise<T>) => Promise<T>;
}

/** Either the wanted thing, or one sentence for the user. */
export type Told<T = object> = ({ readonly ok: true } & T) | { readonly ok: false; readonly says: string };

export const inWords = <T>(result: Result<T>): Told<T> =>
  result.ok ? result : { ok: false, says: storageProblemInWords(result.problem) };

export function createTurns(): Kit['inTurn'] {
  let turn: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = turn.then(work, work);
    turn = mine.catch(() => undefined);
    return mine;
  };
}

/** The furthest state of a project that the second copy or the list of known projects has. */
export async function furthest({ copies, known }: Kit, id: string): Promise<number> {
  const looked = await copies.look(id);
  const lines = looked.ok ? looked.value.lines.map((line) => line.revision) : [];
  const copy = looked.ok ? (looked.value.copy?.revision ?? 0) : 0;
  return Math.max(copy, known.of(id)?.revision ?? 0, ...lines);
}

/** What lies outside the database; otherwise the next start would take the project for lost and bring it back. */
export async function forgetOutside({ copies, journal, drafts, known }: Kit, id: string): Promise<string> {
  const removed = await copies.remove(id);
  journal.forget(id);
  drafts.forget(id);
  known.forget(id);
  return removed.ok ? '' : removed.says;
}

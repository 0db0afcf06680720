import { createStore, type StoreApi } from 'zustand/vanilla';
import {
  type Command,
  type CommandProblem,
  commandProblemInWords,
  type Edit,
} from '../domain/commands/command.ts';
import { applyCommand, bringsHistory } from '../domain/commands/stamp.ts';
import { type Filters, noFilters } from '../domain/grid/filters.ts';
import type { PageId } from '../domain/manual/pages.ts';
import type { Project, SetAside } from '../domain/model/project.ts';
import type { OtherBasisChoice } from '../domain/schedules/otherBasis.ts';
import type { SavingState } from '../storage/autosave.ts';
import { type Clock, type NewId, randomIds } from './clock.ts';
import type { DeskDraft } from './draftDesk.ts';
import { changesNothing, stamped } from './edits.ts';

export type { SavingState } from '../storage/autosave.ts';

/** What was done and how to take it back; `inverse` undoes when applied in the order given. */
export interface Step {
  readonly command: Command;
  readonly inverse: readonly Edit[];
  /** Names the field that is being typed into: the next edit of the same name becomes part of this step. */
  readonly typing?: string | undefined;
}

/** Saved and undoable. */
export interface DocumentSlice {
  readonly project: Project;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
}

/** Of this tab only; lost at reload without harm. */
export interface SessionSlice {
  readonly page: PageId;
  readonly selectedId: string | null;
  readonly filters: Filters;
  /** The basis that the project is held against; null while none was chosen. */
  readonly otherBasis: OtherBasisChoice | null;
  /** False until the first load has ended; until then nothing may be edited. */
  readonly ready: boolean;
  /** True while this project is left for another one: an edit taken now would be dropped. */
  readonly busy: boolean;
  /** Why there is only one copy of the work in this browser; '' while there are two. */
  readonly oneCopy: string;
  /** Sentences the user must see until they are dismissed: what was migrated, set aside or refused. */
  readonly notices: readonly Notice[];
  /** Typed into fields and no edits yet. */
  readonly drafts: readonly DeskDraft[];
  /** Starts the newer version of the app that waits in this browser; null while none does. */
  readonly newVersion: (() => void) | null;
}

export interface Notice {
  readonly id: string;
  readonly kind: 'migrated' | 'setAside' | 'problem' | 'told';
  readonly says: string;
  readonly setAside?: readonly SetAside[];
}

export type Dispatched =
  | { readonly ok: true; readonly changed: boolean }
  | { readonly ok: false; readonly says: string; readonly problem: CommandProblem | null };

export interface AppState {
  readonly document: DocumentSlice;
  readonly session: SessionSlice;
  readonly saving: SavingState;

  /**
   * The only way to change the project. With `typing`, a name for one field and one visit of it, every key can be
   * dispatched (so that nothing typed waits for a blur that never comes) and all of it is one step to undo.
   * Edits of one name must set the same field.
   */
  readonly dispatch: (label: string, edits: readonly Edit[], typing?: string) => Dispatched;
  readonly undo: () => Dispatched;
  readonly redo: () => Dispatched;

  readonly goTo: (page: PageId) => void;
  /** Page and opening in one step, as an address names them. */
  readonly visit: (page: PageId, openingId: string | null) => void;
  readonly select: (openingId: string | null) => void;
  readonly filter: (change: Partial<Filters>) => void;
  readonly compareWith: (choice: OtherBasisChoice | null) => void;
  readonly tell: (notice: Omit<Notice, 'id'>) => void;
  readonly putAway: (noticeId: string) => void;
  readonly offerVersion: (start: () => void) => void;

  /** For the wiring only: another document takes the place of this one, and its history with it. */
  readonly replaceProject: (project: Project) => void;
  readonly setSaving: (saving: SavingState) => void;
  readonly setReady: (ready: boolean) => void;
  readonly setBusy: (busy: boolean) => void;
  readonly setOneCopy: (oneCopy: string) => void;
  readonly setDrafts: (drafts: readonly DeskDraft[]) => void;
}

export type AppStore = StoreApi<AppState>;

export interface AcceptedHow {
  /** Part of the step before it: the same field is still being typed into. */
  readonly joinsLast: boolean;
  readonly takingBack: boolean;
}

export interface StoreNeeds {
  readonly project: Project;
  readonly clock: Clock;
  readonly ids: NewId;
  readonly by: () => string;
  /** Called after every change, undo and redo included, with what goes into the log. */
  readonly onCommand?: (command: Command, project: Project, how: AcceptedHow) => void;
  readonly ready?: boolean;
}

/** Short, because it stands beside every answer in the file. */
const deviceName = () => randomIds().replaceAll('-', '').slice(0, 10);
/** A verdict is never undone: it stays where it is and the step before it is taken back. */
export const lastUndoable = (past: readonly Step[]): Step | undefined =>
  past.findLast((step) => !isVerdict(step));
export const isVerdict = (step: Step | undefined): boolean =>
  step?.command.edits.some((edit) => edit.kind === 'appendVerdict') ?? false;

/** Enough for a long day; beyond it the oldest step can no longer be undone. */
export const historyLimit = 500;

export function createAppStore(needs: StoreNeeds): AppStore {
  return createStore<AppState>()((set, get) => {
    /** Whatever goes back to an earlier state goes on under a new name: what it counted may be in copies already. */
    let device = deviceName();
    const refusal = (): Dispatched | undefined => {
      const { saving, session } = get();
      if (!session.ready) return { ok: false, says: 'The project is still being opened.', problem: null };
      if (session.busy) {
        return { ok: false, says: 'Another project is being opened. Nothing was changed.', problem: null };
      }
      return saving.kind === 'readOnly' ? { ok: false, says: saving.says, problem: null } : undefined;
    };

    type Move = (slice: DocumentSlice, step: Step) => Omit<DocumentSlice, 'project'>;

    /** Applies and logs; `move` says where the step goes in the history. */
    const apply = (command: Command, move: Move, takingBack: boolean, joinsLast = false): Dispatched => {
      const before = get().document;
      const applied = applyCommand(before.project, command, takingBack);
      if (!applied.ok) {
        return { ok: false, says: commandProblemInWords(applied.problem), problem: applied.problem };
      }
      if (bringsHistory(command.edits)) device = deviceName();
      const step: Step = { command, inverse: applied.inverse };
      set({ document: { project: applied.project, ...move(before, step) } });
      // In the same turn, so before anything is painted: what is seen as accepted is there again after a crash.
      needs.onCommand?.(command, applied.project, { joinsLast, takingBack });
      return { ok: true, changed: true };
    };
    const commandOf = (label: string, edits: readonly Edit[], stamp = false): Command => {
      const [at, by] = [needs.clock(), needs.by()];
      // Undo brings facts back with the stamps they had.
      const done = stamp ? [...stamped(edits, at, by)] : [...edits];
      return { id: needs.ids(), at, by, label, edits: done, device };
    };

    return {
      document: { project: needs.project, past: [], future: [] },
      session: {
        page: 'schedule',
        selectedId: null,
        filters: noFilters,
        otherBasis: null,
        ready: needs.ready ?? true,
        busy: false,
        oneCopy: '',
        notices: [],
        drafts: [],
        newVersion: null,
      },
      saving: { kind: 'saved' },

      dispatch: (label, edits, typing) => {
        const refused = refusal();
        if (refused) return refused;
        const { project, past } = get().document;
        if (edits.every((edit) => changesNothing(project, edit))) return { ok: true, changed: false };
        const last = past.at(-1);
        const joinsLast = typing !== undefined && last?.typing === typing;
        const move: Move = (_slice, step) =>
          joinsLast && last
            ? { past: [...past.slice(0, -1), { ...step, typing, inverse: last.inverse }], future: [] }
            : { past: [...past, { ...step, typing }].slice(-historyLimit), future: [] };
        return apply(commandOf(label, edits, true), move, false, joinsLast);
      },

      undo: () => {
        const refused = refusal();
        if (refused) return refused;
        const last = lastUndoable(get().document.past);
        if (!last) return { ok: true, changed: false };
        const move: Move = ({ past, future }) => ({
          past: past.filter((step) => step !== last),
          future: [...future, last],
        });
        return apply(commandOf(`Undo: ${last.command.label}`, last.inverse), move, true);
      },

      redo: () => {
        const refused = refusal();
        if (refused) return refused;
        const next = get().document.future.at(-1);
        if (!next) return { ok: true, changed: false };
        const move: Move = ({ past, future }) => ({
          past: [...past, next].slice(-historyLimit),
          future: future.slice(0, -1),
        });
        return apply(commandOf(`Redo: ${next.command.label}`, next.command.edits), move, true);
      },

      goTo: (page) => set(({ session }) => ({ session: { ...session, page } })),
      visit: (page, selectedId) => {
        const { session } = get();
        if (session.page !== page || session.selectedId !== selectedId) {
          set({ session: { ...session, page, selectedId } });
        }
      },
      select: (selectedId) => set(({ session }) => ({ session: { ...session, selectedId } })),
      filter: (change) =>
        set(({ session }) => ({ session: { ...session, filters: { ...session.filters, ...change } } })),
      compareWith: (otherBasis) => set(({ session }) => ({ session: { ...session, otherBasis } })),
      tell: (notice) =>
        set(({ session }) => ({
          session: { ...session, notices: [...session.notices, { ...notice, id: needs.ids() }] },
        })),
      putAway: (noticeId) =>
        set(({ session }) => ({
          session: { ...session, notices: session.notices.filter((one) => one.id !== noticeId) },
        })),

      offerVersion: (newVersion) => set(({ session }) => ({ session: { ...session, newVersion } })),

      replaceProject: (project) => {
        device = deviceName();
        set(({ session }) => ({
          document: { project, past: [], future: [] },
          session: {
            ...session,
            otherBasis: null,
            selectedId:
              session.selectedId !== null && Object.hasOwn(project.openings, session.selectedId)
                ? session.selectedId
                : null,
          },
        }));
      },
      setSaving: (saving) => set({ saving }),
      setReady: (ready) => set(({ session }) => ({ session: { ...session, ready } })),
      setBusy: (busy) => set(({ session }) => ({ session: { ...session, busy } })),
      setOneCopy: (oneCopy) => set(({ session }) => ({ session: { ...session, oneCopy } })),
      setDrafts: (drafts) => set(({ session }) => ({ session: { ...session, drafts } })),
    };
  });
}

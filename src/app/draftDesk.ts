import type { Draft, DraftBox } from '../storage/drafts.ts';
import type { Clock } from './clock.ts';

/** A draft of the shown project, and whether its field is on the screen. */
export interface DeskDraft extends Draft {
  readonly isShown: boolean;
}

/** Where a draft belongs; `place` stays the same from start to start. */
export type DraftPlace = Pick<Draft, 'place' | 'label' | 'href'>;

/** The drafts of the project on the screen. Every text field reads and writes here, so none keeps a copy of its own. */
export interface DraftDesk {
  readonly open: (projectId: string) => void;
  readonly type: (where: DraftPlace, value: unknown) => void;
  readonly drop: (place: string) => void;
  /** The field is on the screen; returns what takes it off. */
  readonly show: (place: string) => () => void;
  /** Every draft can be found again at the next start. */
  readonly isKept: () => boolean;
  /** Of a project that is erased. */
  readonly forget: (projectId: string) => void;
}

export function createDraftDesk(needs: {
  readonly box: DraftBox;
  readonly clock: Clock;
  readonly onChange: (drafts: readonly DeskDraft[]) => void;
}): DraftDesk {
  const { box, clock, onChange } = needs;
  let project = '';
  let drafts = new Map<string, DeskDraft>();
  const fields = new Map<string, number>();
  /** Places whose draft only memory holds. */
  const loose = new Set<string>();
  const tell = () => onChange([...drafts.values()]);
  const mark = (place: string) => {
    const draft = drafts.get(place);
    const isShown = (fields.get(place) ?? 0) > 0;
    if (!draft || draft.isShown === isShown) return;
    drafts.set(place, { ...draft, isShown });
    tell();
  };
  const empty = () => {
    const had = drafts.size > 0;
    drafts = new Map();
    loose.clear();
    return had;
  };
  return {
    open: (projectId) => {
      const had = empty();
      project = projectId;
      for (const draft of box.all(projectId)) {
        drafts.set(draft.place, { ...draft, isShown: (fields.get(draft.place) ?? 0) > 0 });
      }
      if (had || drafts.size > 0) tell();
    },
    type: (where, value) => {
      const draft: Draft = { ...where, at: clock(), value };
      if (box.keep(project, draft)) loose.delete(where.place);
      else loose.add(where.place);
      drafts.set(where.place, { ...draft, isShown: (fields.get(where.place) ?? 0) > 0 });
      tell();
    },
    drop: (place) => {
      if (!drafts.delete(place)) return;
      box.drop(project, place);
      loose.delete(place);
      tell();
    },
    show: (place) => {
      fields.set(place, (fields.get(place) ?? 0) + 1);
      mark(place);
      return () => {
        fields.set(place, (fields.get(place) ?? 1) - 1);
        mark(place);
      };
    },
    isKept: () => loose.size === 0,
    forget: (projectId) => {
      box.forget(projectId);
      if (projectId === project && empty()) tell();
    },
  };
}

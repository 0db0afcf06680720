import { useState } from 'react';
import {
  type GridView,
  type KeptViews,
  savedAs,
  viewsOf,
  without,
  withViews,
} from '../../domain/grid/view.ts';
import { useApp, useApplication } from '../context.ts';

export interface ViewDesk {
  readonly view: GridView;
  readonly saved: KeptViews['saved'];
  readonly change: (part: Partial<GridView>) => void;
  readonly save: (name: string) => void;
  readonly remove: (name: string) => void;
}

/** How the schedule of this project is looked at, kept in this browser with every change. */
export function useGridView(): ViewDesk {
  const { preferences } = useApplication();
  const projectId = useApp((state) => state.document.project.id);
  const read = () => ({ projectId, views: viewsOf(preferences.get('gridViews'), projectId) });
  const [kept, setKept] = useState(read);
  const { views } = kept.projectId === projectId ? kept : read();
  const keep = (next: KeptViews) => {
    preferences.set('gridViews', withViews(preferences.get('gridViews'), projectId, next));
    setKept({ projectId, views: next });
  };
  return {
    view: views.now,
    saved: views.saved,
    change: (part) => keep({ ...views, now: { ...views.now, ...part } }),
    save: (name) => keep(savedAs(views, name)),
    remove: (name) => keep(without(views, name)),
  };
}

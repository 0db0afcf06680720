import { type AnyFact } from '../../domain/model/fact.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening } from '../../domain/model/project.ts';
import { useStore } from '../context.ts';

export type SurveyFact = AnyFact;

/** Stores an answer where it belongs, at the opening or for the building; a returned sentence says why not. */
export function useAnswer(opening: Opening) {
  const store = useStore();
  return (key: FactKey) => (fact: SurveyFact | null) => {
    const edit =
      fieldInfo(key).scope === 'building'
        ? ({ kind: 'setBuildingFact', fact: key, value: fact } as const)
        : ({ kind: 'setFact', id: opening.id, fact: key, value: fact } as const);
    const result = store.getState().dispatch(`${opening.mark}: ${fieldInfo(key).label}`, [edit]);
    return result.ok ? undefined : result.says;
  };
}

import { linkTo } from '../../app/addresses.ts';
import { type FactKey, fieldInfo } from '../../domain/model/fields.ts';
import type { Opening } from '../../domain/model/project.ts';
import type { DraftPlace } from '../parts/useDraft.ts';

/** One fact has one draft, whether it is typed in the survey, on the walk or in the grid. */
export function placeOfFact(of: Pick<Opening, 'id' | 'mark'> | null, fact: FactKey): DraftPlace {
  const { label, scope } = fieldInfo(fact);
  return of === null || scope === 'building'
    ? { place: `building/${fact}`, label, href: linkTo('project') }
    : {
        place: `fact/${of.id}/${fact}`,
        label: `${of.mark}, ${label}`,
        href: linkTo('opening', of.id),
      };
}

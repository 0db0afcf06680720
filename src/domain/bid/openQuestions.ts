import type { Decision } from '../decide/decision.ts';
import { items } from '../devices/items.ts';
import { fieldInfo } from '../model/fields.ts';
import { openingsInOrder, type Project } from '../model/project.ts';
import { unsignedOpenings } from '../review/status.ts';
import { orderState } from '../sets/forOrder.ts';
import { unstated } from '../hardware/itemTerms.ts';
import { missingKeys } from '../sets/missing.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';
import type { Bill } from './bill.ts';

/** How far the paper may be relied on. */
export interface Standing {
  readonly unsigned: number;
  readonly unsettled: number;
  /** "PRELIMINARY: 12 openings unsigned, 3 not settled"; empty once nothing stands in the way. */
  readonly says: string;
}

export function standingOf(project: Project, decisions: ReadonlyMap<string, Decision>): Standing {
  const states = openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    return decision ? [orderState(project, opening, decision)] : [];
  });
  // An opening that is not settled may wait for a name as well.
  const unsigned = unsignedOpenings(project, decisions).length;
  const unsettled = states.filter((state) => state === 'unsettled' || state === 'incomplete').length;
  const parts = [
    ...(unsigned > 0 ? [`${counted(unsigned, 'opening')} unsigned`] : []),
    ...(unsettled > 0 ? [`${counted(unsettled, 'opening')} not settled or not complete`] : []),
  ];
  return { unsigned, unsettled, says: parts.length === 0 ? '' : `PRELIMINARY: ${parts.join(', ')}` };
}

/** With a signature or a fact open nothing is issued as final. */
export function issuedInWords(edition: string, standing: string): string {
  const issued = `Edition ${edition} is issued and frozen`;
  return standing === '' ? `${issued}.` : `${issued}, not as final. ${standing}.`;
}

/** What a bidder would have to call about, made from what is missing: each with the openings or articles it is about. */
export function openQuestions(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  bill: Bill,
): readonly string[] {
  const byFact = new Map<string, string[]>();
  const without: string[] = [];
  const unsigned = unsignedOpenings(project, decisions).map(({ mark }) => mark);
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    if (!decision.chosen) without.push(opening.mark);
    for (const key of missingKeys(project, opening, decision)) {
      const { label } = fieldInfo(key);
      byFact.set(label, [...(byFact.get(label) ?? []), opening.mark]);
    }
  }
  const { finish, keySet } = unstated(
    project,
    bill.rows.flatMap((row) => row.item ?? []),
  );
  const names = (ids: readonly (keyof typeof items)[]) => ids.map((id) => items[id].name).join('; ');
  return [
    ...(without.length > 0 ? [`What is carried for openings without a set: ${without.join(', ')}?`] : []),
    ...(unsigned.length > 0 ? [`Who signs, and when: ${unsigned.join(', ')}?`] : []),
    ...[...byMarks(byFact)].map(([marks, labels]) => `At ${marks}, not surveyed: ${labels.join('; ')}?`),
    ...(finish.length > 0 ? [`Finish of ${counted(finish.length, 'item')}: ${names(finish)}?`] : []),
    ...(keySet.length > 0 ? [`Key set of ${counted(keySet.length, 'item')}: ${names(keySet)}?`] : []),
  ];
}

/** Facts that the same openings lack are one question. */
function byMarks(byFact: ReadonlyMap<string, readonly string[]>): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [label, marks] of byFact) {
    const key = marks.join(', ');
    found.set(key, [...(found.get(key) ?? []), midSentence(label)]);
  }
  return found;
}

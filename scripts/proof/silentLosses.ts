import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import type { ItemId } from '../../src/domain/devices/items.ts';
import { known } from '../../src/domain/testing/facts.ts';
import { type FactKey, factKeys, type FactValues } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { missingKeys } from '../../src/domain/sets/missing.ts';
import { officeAnswers, officeProject } from './officeDoor.ts';
import type { Survey } from '../../tests/properties/surveys.ts';

/** Something a settled opening had, and no longer has once nobody knows one of its facts, without a word about it. */
export interface Loss {
  readonly fact: FactKey;
  readonly item: ItemId;
  readonly mark: string;
}

/**
 * Each known fact of a settled opening made unknown, one at a time. An item may go only where the state says that
 * something is open, or the fact is named among those that are missing.
 */
export function silentLosses(
  project: Project,
  opening: Opening,
): { readonly trials: number; readonly lost: readonly Loss[] } {
  const before = decide(project, opening);
  if (before.state !== 'settled') return { trials: 0, lost: [] };
  const items = itemsOf(before);
  const lost: Loss[] = [];
  let trials = 0;
  for (const fact of factKeys) {
    const told = opening.facts[fact] ?? project.building[fact];
    if (told === undefined || told.is === 'unknown') continue;
    trials++;
    const without: Opening = { ...opening, facts: { ...opening.facts, [fact]: { is: 'unknown' } } };
    const after = decide(project, without);
    if (after.state !== 'settled') continue;
    const left = itemsOf(after);
    const gone = [...items].filter((item) => !left.has(item));
    if (gone.length === 0 || missingKeys(project, without, after).includes(fact)) continue;
    for (const item of gone) lost.push({ fact, item, mark: opening.mark });
  }
  return { trials, lost };
}

function itemsOf(decision: Decision): ReadonlySet<ItemId> {
  return new Set([
    ...partsOf(decision).map((part) => part.item),
    ...decision.requires.flatMap(({ clause }) => (clause.effect === 'require' ? clause.items : [])),
  ]);
}

/** A made-up survey laid over an ordinary door of which everything else is known. */
export function openingOf({ facts, basis }: Survey, mark: string): readonly [Project, Opening] {
  const ordinary = Object.fromEntries(
    factKeys.flatMap((key) => {
      const value = officeAnswers(key);
      return value === undefined ? [] : [[key, value]];
    }),
  ) as FactValues;
  const knownFacts = Object.fromEntries(
    Object.entries({ ...ordinary, ...facts }).map(([key, value]) => [key, known(value)]),
  ) as Opening['facts'];
  return [
    { ...newProject('p', 'P'), basis, building: officeProject.building },
    { ...newOpening('o', mark), facts: knownFacts },
  ];
}

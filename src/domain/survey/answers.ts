import type { Slots } from '../logic/slots.ts';
import { slotOf } from '../logic/slots.ts';
import { factAt, type AnyFact } from '../model/fact.ts';
import { type FactKey, factKeys, fieldInfo, type AnyValue } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { valueForSurveyor } from './amounts.ts';

/** One thing that was answered at an opening, in words. */
export interface Answered {
  readonly key: FactKey;
  readonly label: string;
  readonly value: string;
  readonly standing: AnyFact['is'];
  /** Why it is only assumed, or that nobody could tell; empty when it is known. */
  readonly note: string;
}

/** Everything answered here, the newest first; what carries no time stands last, in the order of the survey. */
export function answersGiven(opening: Opening): readonly Answered[] {
  return factKeys
    .flatMap((key) => {
      const fact = factAt(opening.facts, key);
      return fact ? [{ key, fact }] : [];
    })
    .toSorted((a, b) => (b.fact.at ?? '').localeCompare(a.fact.at ?? ''))
    .map(({ key, fact }) => ({
      key,
      label: fieldInfo(key).label,
      value: fact.is === 'unknown' ? 'Not known' : valueForSurveyor(key, fact.value),
      standing: fact.is,
      note: fact.is === 'assumed' ? `assumed: ${fact.from}` : '',
    }));
}

/** Where a value comes from that was not entered at this opening, and how it reads. */
export interface Borrowed {
  readonly value: AnyValue;
  readonly words: string;
  readonly from: string;
  /** An assumption can be confirmed with one tap; what the building says needs none. */
  readonly assumed: boolean;
}

/** What stands in for an answer nobody gave here: an assumption, or what was said of the whole building. */
export function borrowedFor(
  key: FactKey,
  opening: Opening,
  project: Pick<Project, 'building'>,
  decision: Answering,
): Borrowed | undefined {
  const value = borrowedValue(key, opening, project, decision);
  if (value === undefined) return undefined;
  const from = decision.assumed.get(key);
  const assumed = from !== undefined;
  return {
    value,
    words: valueForSurveyor(key, value),
    from: from ?? 'said of the whole building',
    assumed,
  };
}

interface Answering {
  readonly slots: Slots;
  readonly assumed: ReadonlyMap<FactKey, string>;
}

/** Its value alone, for a place that asks at thousands of openings. */
export function borrowedValue(
  key: FactKey,
  opening: Opening,
  project: Pick<Project, 'building'>,
  { slots, assumed }: Answering,
): AnyValue | undefined {
  if (opening.facts[key] !== undefined) return undefined;
  const value = slots[slotOf(key)];
  if (value === undefined || fieldInfo(key).scope === 'building') return undefined;
  return assumed.has(key) || project.building[key] !== undefined ? value : undefined;
}

/** A label or a preparation is never confirmed along with the rest: two doors alike in all else differ in it. */
const lookedAtApart: ReadonlySet<FactKey> = new Set([
  'fireLabel',
  'fireRatingMin',
  'frameLabelMin',
  'exitHardwareFireListed',
  'strikePrep',
  'framePrepared',
  'leafPrepared',
  'inactiveLeafPrepared',
  'fieldModificationApproved',
]);

export function isLookedAtApart(key: FactKey): boolean {
  return lookedAtApart.has(key);
}

/** Facts that only stand as assumed here, each as the known fact it becomes when somebody has seen it. */
export function toConfirm(opening: Opening): readonly { readonly key: FactKey; readonly fact: AnyFact }[] {
  return factKeys.flatMap((key) => {
    const fact = factAt(opening.facts, key);
    return fact?.is === 'assumed' ? [{ key, fact: { is: 'known', value: fact.value } as const }] : [];
  });
}

import { type Facts, factAt, type AnyFact } from '../model/fact.ts';
import { type FactKey, factKeys, type FactValues, type AnyValue, valueEntries } from '../model/fields.ts';
import type { Project } from '../model/project.ts';
import { midSentence, startSentence } from '../text/midSentence.ts';
import type { Look } from './look.ts';
import { sayFact } from './sayFact.ts';

/** What an owner wishes and what counts for the ranking; asked of every door that is controlled. */
export const usualWishes = [
  'readerSides',
  'wishScheduledUnlock',
  'wishLockdown',
  'wishDelayedEgress',
  'securityNeed',
  'traffic',
  'appearance',
] as const satisfies readonly FactKey[];

/**
 * What most doors of a building share and one look tells. No label, no rating, no preparation and no lock is among
 * them: each is looked at for itself.
 */
export const usualDoor = [
  'doorType',
  'leafMaterial',
  'frameMaterial',
  'leafWidthIn',
  'leafHeightIn',
  'exterior',
  'workStatus',
  'closing',
  'operator',
  'holdOpen',
  'wallConstruction',
  'supplyVolts',
  'distanceToSupplyFt',
] as const satisfies readonly FactKey[];

/** Whether a fact may be said once for most doors. */
export function mayBeUsual(key: FactKey): boolean {
  return [...usualWishes, ...usualDoor].some((one) => one === key);
}

function stated(usual: Facts, keys: readonly FactKey[]): FactValues {
  const facts: Record<string, AnyValue> = {};
  for (const key of keys) {
    const fact = factAt(usual, key);
    if (fact && fact.is !== 'unknown') facts[key] = fact.value;
  }
  return facts;
}

/** The building's usual as looks of their own: one press takes it, one refuses it. None where nothing was stated. */
export function usualLooks({ usual }: Pick<Project, 'usual'>): readonly Look[] {
  const look = (id: string, station: Look['station'], ask: string, facts: FactValues): readonly Look[] =>
    Object.keys(facts).length === 0
      ? []
      : [{ id, station, ask, presets: [{ label: `As usual: ${midSentence(inWords(facts))}`, facts }] }];
  return [
    ...look('usualWishes', 'wanted', 'Is it wanted as usual in this building?', stated(usual, usualWishes)),
    ...look('usualDoor', 'face', 'Is it a usual door of this building?', stated(usual, usualDoor)),
  ];
}

/** Facts in one line, as somebody reads them at the door: "Hollow metal, 36 in × 84 in, closer …". */
export function inWords(facts: FactValues): string {
  const said = valueEntries(facts).map(([key, value]) => sayFact(key, value));
  return startSentence(said.join('; '));
}

/** What a finished door would have the building's usual say, in the order of the survey. */
export function usualFrom(facts: Facts): readonly { readonly key: FactKey; readonly fact: AnyFact }[] {
  return factKeys.flatMap((key) => {
    const fact = factAt(facts, key);
    return mayBeUsual(key) && fact?.is === 'known' ? [{ key, fact }] : [];
  });
}

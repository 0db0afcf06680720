import { itemOf, type ItemId, type Told } from '../devices/items.ts';
import { valueIn } from '../logic/slots.ts';
import type { Decision } from '../decide/decision.ts';
import { isSwinging } from '../hardware/inPlace.ts';
import { candidateInWords } from '../words/arrangement.ts';
import { valueInWords } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';
import { type FactKey, fieldInfo } from '../model/fields.ts';
import { feet } from '../power/figures.ts';
import { conductorInWords, lockCableInWords } from '../power/lockCable.ts';
import type { FedOpening } from '../power/powerPlan.ts';
import { sizeInWords } from '../words/openingWords.ts';

/** An opening of a set, with what was decided for it. */
export interface Member {
  readonly mark: string;
  readonly decision: Decision;
  /** Its feed; absent where nothing is fed. */
  readonly fed?: FedOpening | undefined;
}

/** What the leaf carries today that no lockset can be ordered after. */
const noLockBody: readonly unknown[] = ['pushPull', 'roller', 'deadboltOnly'];

/** What has to be known to order the item, besides its name. */
export function detailOf(item: ItemId, members: readonly Member[]): string {
  const { electrified, handed, told = [] } = itemOf(item);
  const chosen = members[0]?.decision.chosen?.candidate;
  const keys: readonly Told[] = [
    ...told,
    ...(handed ? (['handing'] as const) : []),
    ...(electrified ? (['supplyVolts'] as const) : []),
  ];
  return [
    ...(electrified && chosen ? [candidateInWords(chosen)] : []),
    ...keys.flatMap((key) => toldOf(key, members)),
  ].join(' · ');
}

function toldOf(key: Told, members: readonly Member[]): readonly string[] {
  switch (key) {
    case 'lockBody':
      return [lockBody(members)];
    case 'leafSize':
      return [acrossWords(members, ({ decision }) => sizeInWords(decision) || 'leaf size not surveyed')];
    case 'cable':
      return cableInWords(members);
    case 'cutout':
      // It says which face plate; a rim strike lies on the surface.
      return members[0]?.decision.chosen?.candidate.deviceId === 'strikeRim'
        ? []
        : [acrossMembers('strikePrep', members)];
    case 'handing':
      // A leaf that does not swing has no hand; nobody is told that it was not surveyed.
      return members.some(({ decision }) => isSwinging(decision)) ? [acrossMembers(key, members)] : [];
    default:
      return [acrossMembers(key, members)];
  }
}

function lockBody(members: readonly Member[]): string {
  return acrossWords(members, ({ decision }) => {
    const latch = valueIn(decision.slots, 'latch');
    const today = wordOf('latch', decision);
    return noLockBody.includes(latch) ? `kind of lock not decided (today: ${midSentence(today)})` : today;
  });
}

/** The value where all openings agree, otherwise each value with its marks: "12 V DC: 101; 24 V DC: 102, 103". */
export function acrossMembers(key: FactKey, members: readonly Member[]): string {
  return acrossWords(members, ({ decision }) => wordOf(key, decision));
}

function wordOf(key: FactKey, { slots }: Decision): string {
  const value = valueIn(slots, key);
  return value === undefined ? `${midSentence(fieldInfo(key).label)} not surveyed` : valueInWords(key, value);
}

export function acrossWords(members: readonly Member[], words: (member: Member) => string): string {
  const marks = new Map<string, string[]>();
  for (const member of members) {
    const said = words(member);
    marks.set(said, [...(marks.get(said) ?? []), member.mark]);
  }
  const [first] = marks.keys();
  if (marks.size <= 1) return first ?? '';
  return [...marks].map(([said, list]) => `${said}: ${list.join(', ')}`).join('; ');
}

/** One run in full; of several how far they reach, and the thinnest conductor of each, not the volts of every one. */
function cableInWords(members: readonly Member[]): readonly string[] {
  const [first] = members;
  if (first && members.length === 1) return [lockCableInWords(first.fed)];
  const words: string[] = [];
  const known = members.flatMap(({ fed }) => fed?.placing.feet ?? []);
  if (known.length > 0) {
    const [least, most] = [Math.min(...known), Math.max(...known)];
    const reach = least === most ? feet(least) : `${least} to ${feet(most)}`;
    const sum = known.reduce((total, one) => total + one, 0);
    words.push(`${reach} one way, ${feet(sum)} in all`);
  }
  const without = members.filter(({ fed }) => (fed?.placing.feet ?? null) === null);
  if (without.length === members.length) words.push('length not surveyed');
  else if (without.length > 0)
    words.push(`length not surveyed: ${without.map(({ mark }) => mark).join(', ')}`);
  const sized = members.filter(({ fed }) => fed?.sizing);
  if (sized.length > 0) {
    words.push(`for the lock ${acrossWords(sized, ({ fed }) => conductorInWords(fed))}`, eachRun);
  }
  return words;
}
const eachRun = 'each run with its volts: see Power and cable';

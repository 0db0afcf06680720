import { midSentence } from '../text/midSentence.ts';
import { counted } from '../text/counted.ts';
import type { Project, SecurityLevel, Space } from '../model/project.ts';
import { buildingConditionIds, condition, type ConditionId } from '../simulate/conditions.ts';
import { hoursInWords } from '../simulate/sentences.ts';
import { candidateInWords, releaseInWords } from '../words/arrangement.ts';
import { areaInFeet } from '../units/area.ts';
import type { Dispersal } from './dispersal.ts';
import type { BuildingFinding } from './finding.ts';
import type { Suggestion } from './suggest.ts';

/** Every sentence about the building as a whole. */

/** In place of a list of findings. */
export const noFindings = 'No findings in any condition.';

const levelWords: Readonly<Record<SecurityLevel, string>> = {
  public: 'Public',
  general: 'General',
  staff: 'Staff',
  restricted: 'Restricted',
  critical: 'Critical',
};
export function levelInWords(level: SecurityLevel | null): string {
  return level === null ? 'Level not stated' : levelWords[level];
}

export const kindWords: Readonly<Record<Space['kind'], string>> = {
  room: 'Room',
  corridor: 'Corridor',
  stair: 'Stair',
  lobby: 'Lobby',
  elevator: 'Elevator',
  outside: 'Outside',
  roof: 'Roof',
  court: 'Court',
};

export function kindInWords({ kind, publicWay }: Pick<Space, 'kind' | 'publicWay'>): string {
  if (kind !== 'outside' || publicWay === null) return kindWords[kind];
  return publicWay ? 'Outside, public way' : 'Outside, yard to be left';
}

/** "A", "A and B", "A, B and 3 more". */
function named(all: readonly string[], most = 4): string {
  if (all.length <= 1) return all[0] ?? '';
  if (all.length > most) return `${all.slice(0, most).join(', ')} and ${all.length - most} more`;
  return `${all.slice(0, -1).join(', ')} and ${all[all.length - 1]}`;
}
const people = (count: number) => counted(count, 'person', 'people');

export const says = {
  /** `around`: its openings, where none of them is shut but none lets its people out. */
  trapped: (space: string, shut: readonly string[], around: readonly string[] = []) =>
    shut.length === 0
      ? `${space}: no opening is entered as its egress. ${around.length === 0 ? 'No opening lets its people out' : `As entered, people come in by ${named(around)} and do not go out there`}: enter “Both ways”, swap the two sides, or add the missing exit.`
      : `${space}: no one can leave; ${named(shut)} ${shut.length === 1 ? 'blocks' : 'block'} egress.`,
  keyed: (space: string, marks: readonly string[]) =>
    `${space}: while ${named(marks)} ${marks.length === 1 ? 'is' : 'are'} locked by key no one can leave. The rules here allow that only while no one is inside; someone must unlock it first and lock it last.`,
  keyedBelowStair: (space: string, marks: readonly string[]) =>
    `${space}: people from upstairs leave by ${named(marks)}, locked by key while the room there is closed. Whoever is still upstairs then cannot leave. The rules here allow such a lock only while no one is inside; have someone confirm who unlocks it, and for whom.`,
  noReentry: (stair: string, marks: readonly string[]) =>
    `${stair}: from inside the stair there is no re-entry to any floor, neither in locked hours nor under fire alarm nor on command (${named(marks)}). People who meet smoke below have nowhere to go (IBC 1010.1.9.12 of 2018, 1010.2.7 of 2021, from memory).`,
  staffOnly: (space: string, marks: readonly string[], staff: 'there' | 'none' | 'notKnown') =>
    `${space}: people leave only when staff open ${named(marks)}${
      staff === 'there'
        ? ''
        : staff === 'none'
          ? ', and no one is there who can'
          : '; whether someone is always there who can was not surveyed'
    }.`,
  restsOnTwo: (space: string, marks: readonly string[], alarmCuts: boolean) =>
    `${space}: sensor and button are all that lets people out at ${named(marks)}. With both failed they wait ${
      alarmCuts
        ? 'for the fire alarm or for lock power to be cut'
        : 'until lock power is cut, because no alarm cuts it here'
    }.`,
  dispersal: (space: string, { yard, people: load, areaFt2, ft2PerPerson, neededFt2 }: Dispersal) =>
    `${space}: the way ends in ${yard}, behind a locked gate. Its safe dispersal area needs ${
      neededFt2 === null
        ? `${ft2PerPerson} ft² a person, and how many people was not surveyed`
        : `${areaInFeet(neededFt2)} for ${people(load ?? 0)} (${ft2PerPerson} ft² a person)`
    } and ${areaFt2 === null ? 'its area is not known' : `has ${areaInFeet(areaFt2)}`}. It also has to lie 50 ft from the building, on the same lot, and be marked (IBC 1028.5, read second-hand).`,
  publicWayAsked: (space: string, gates: readonly string[]) =>
    `${space}: egress ends here, and the survey does not say whether it is a public way or a yard that must itself be left${gates.length > 0 ? `. ${named(gates)} ${gates.length === 1 ? 'leads' : 'lead'} out of it, so it looks like a yard` : ''}.`,
  notSaid: (space: string, marks: readonly string[]) =>
    `${space}: whether people can leave depends on ${named(marks)}, where nothing is decided or the far side is not stated.`,
  /** `hours`: battery hours it takes; 0 none, null not stated, undefined where no power loss opens it. */
  exposed: (
    space: string,
    level: string,
    from: string,
    marks: readonly string[],
    hours: number | null | undefined,
  ) =>
    `${space} (${midSentence(level)}) is reached from ${from} without a credential, through ${named(marks)}${
      hours === undefined || hours === 0
        ? ''
        : hours === null
          ? '; after line power is lost once the batteries run down; their hours are not stated'
          : `; after line power is lost once ${hoursInWords(hours)} of battery run down`
    }.`,
  tooNarrow: (all: number, passed: number, marks: readonly string[]) =>
    `${people(all)} leave and the doors are counted for ${passed}; the bottleneck is ${named(marks)}.`,
  exitLost: (mark: string, all: number, passed: number) =>
    `Without ${mark} the doors left are counted for ${passed} of ${people(all)}; at least half should remain (IBC 1005.5, from general knowledge).`,
  oneExit: (mark: string, all: number) => `All ${people(all)} leave the building by ${mark} alone.`,
  noOutside: 'No space is entered as “outside”, so whether people get out cannot be checked.',
  noPublic: 'No space is public or outside, so where an intruder would enter from cannot be checked.',
  noDoors: (space: string) => `${space}: no opening leads there.`,
  oneSided: (mark: string) => `${mark} does not say which two spaces it connects.`,
  sameSpace: (mark: string) => `${mark} leads from a space into the same space.`,
  undecided: (marks: readonly string[]) =>
    `Nothing is decided at ${named(marks)}; they count neither as egress nor as open.`,
  noLevel: (count: number) =>
    `${count === 1 ? 'One space has' : `${count} spaces have`} no security level; their exposure is not checked.`,
  noWidth: (marks: readonly string[]) =>
    `The clear width of ${named(marks)} is not known; they are counted as wide enough.`,
} as const;

/** Action at one opening of a minimum cut. */
export function suggestionInWords(mark: string, suggestion: Suggestion): string {
  switch (suggestion.kind) {
    case 'failMode':
      return `${mark}: ${candidateInWords(suggestion.candidate)} stays locked here, with the same kind of device.`;
    case 'runnerUp':
      return `${mark}: the runner-up stays locked here: ${candidateInWords(suggestion.candidate)}, ${midSentence(releaseInWords(suggestion.candidate))}.`;
    case 'other':
      return `${mark}: ${candidateInWords(suggestion.candidate)} stays locked here, ${midSentence(releaseInWords(suggestion.candidate))}.`;
    case 'lock':
      return `${mark}: nothing locks it now; any lock the rules allow here would secure it.`;
    case 'none':
      return `${mark}: the rules leave no arrangement that stays locked here; change the door, or move the secure line.`;
  }
}
export const cannotClose =
  'No lock secures it: every path in runs against egress. Move the secure line, or add a second door.';

export function conditionsInWords(ids: readonly ConditionId[]): string {
  const missing = buildingConditionIds.filter((id) => !ids.includes(id));
  if (ids.length > 0 && missing.length === 0) return 'every condition';
  const names = (some: readonly ConditionId[]) =>
    some.map((id) => midSentence(condition(id).name)).join(', ');
  return missing.length <= 3 ? `every condition but ${names(missing)}` : names(ids);
}

/** The building in one line: how large it is, and how much was found of each weight. */
export function buildingInNumbers(project: Project, findings: readonly BuildingFinding[]): string {
  const spaces = counted(Object.keys(project.spaces).length, 'space');
  const openings = counted(Object.keys(project.openings).length, 'opening');
  const found = (['severe', 'serious', 'note'] as const).map((severity) => {
    const of = findings.filter((one) => one.severity === severity).length;
    return severity === 'note' ? counted(of, 'note') : `${of} ${severity}`;
  });
  return `${spaces}, ${openings}; ${found.join(', ')}`;
}

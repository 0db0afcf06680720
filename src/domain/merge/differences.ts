import type { Edit } from '../commands/command.ts';
import { readPart } from '../commands/writeParts.ts';
import { historyOf, whole } from '../model/history.ts';
import { addressOf, changedParts, entryOf, listIsThere, namesOf } from '../model/parts.ts';
import type { Project } from '../model/project.ts';
import { counted } from '../text/counted.ts';
import { isSetAside, mergeProjects, whenOf } from './merge.ts';
import { meaning, type Register, registerOf, standing } from './register.ts';
import { fieldInWords, partInWords, recordInWords } from './words.ts';

/** A value with the person and the time, where anybody said so. */
export interface Side {
  readonly value: unknown;
  readonly says: string;
  readonly at: string;
  readonly by: string;
}

/** What a merge makes of a difference. */
export type Outcome = 'mine' | 'theirs' | 'both' | 'asked';

export const outcomeWords: Readonly<Record<Outcome, string>> = {
  mine: 'Stays as it is here',
  theirs: 'Taken from the file',
  both: 'Both are kept',
  asked: 'Entered on both sides: both are kept until you decide',
};

export interface Difference {
  readonly record: string;
  readonly field: string;
  readonly where: string;
  readonly what: string;
  readonly mine: Side;
  readonly theirs: Side;
  readonly outcome: Outcome;
}

/** A record that only one side has, and what a merge makes of it. */
export interface OnlyOne {
  readonly record: string;
  readonly says: string;
  readonly outcome: 'comes' | 'stays' | 'goes' | 'asked';
}

export interface Compared {
  readonly onlyThere: readonly OnlyOne[];
  readonly onlyHere: readonly OnlyOne[];
  readonly differing: readonly Difference[];
}

/** Two copies of one project side by side, and what a merge would do. */
export function compareCopies(mine: Project, theirs: Project): Compared {
  const merged = mergeProjects(mine, theirs);
  const states = [mine, theirs];
  const kept = historyOf(merged).kept;
  const onlyThere: OnlyOne[] = [];
  const onlyHere: OnlyOne[] = [];
  const differing: Difference[] = [];
  const side = sideOf(states);
  for (const { record, field, before, after } of changedParts(mine, theirs)) {
    if (field === listIsThere(namesOf(field)[0] as string)) continue;
    const asked = entryOf(entryOf(kept, record), field) !== undefined;
    const stands = readPart(merged, { record, field });
    if (field === whole) {
      const name = recordInWords(record, states);
      const isThere = before === undefined;
      const outcome = asked ? 'asked' : stands === undefined ? 'goes' : isThere ? 'comes' : 'stays';
      (isThere ? onlyThere : onlyHere).push({
        record,
        says: onlyOneInWords(name, isThere, outcome),
        outcome,
      });
      continue;
    }
    if (meaning(before) === meaning(after)) continue;
    const register = entryOf(entryOf(kept, record), field);
    const isQuestion =
      register !== undefined &&
      !isSetAside(record, field) &&
      standing(register as Register, field, () => '').asked;
    const outcome: Outcome = isQuestion
      ? 'asked'
      : meaning(stands) === meaning(before)
        ? 'mine'
        : meaning(stands) === meaning(after)
          ? 'theirs'
          : 'both';
    differing.push({
      record,
      field,
      where: recordInWords(record, states),
      what: fieldInWords(record, field),
      mine: side(mine, record, field, before),
      theirs: side(theirs, record, field, after),
      outcome,
    });
  }
  return { onlyThere, onlyHere, differing };
}

function onlyOneInWords(name: string, isThere: boolean, outcome: OnlyOne['outcome']): string {
  switch (outcome) {
    case 'comes':
      return `${name}: comes in from the file.`;
    case 'stays':
      return `${name}: stays.`;
    case 'goes':
      return isThere
        ? `${name}: was removed here and stays removed.`
        : `${name}: was removed there and goes here too.`;
    case 'asked':
      return isThere
        ? `${name}: was removed here and edited there. It comes back until you decide.`
        : `${name}: was removed there and edited here. It stays until you decide.`;
  }
}

function sideOf(states: readonly Project[]) {
  const when = whenOf(states.map(historyOf));
  return (project: Project, record: string, field: string, value: unknown): Side => {
    const last = registerOf(historyOf(project), record, field, value).at(-1);
    return { value, says: partInWords(field, value, states), ...when(last ?? { dot: '' }) };
  };
}

/** How the page begins: one sentence. */
export function comparedInWords({ onlyThere, onlyHere, differing }: Compared): string {
  const asked = [...onlyThere, ...onlyHere, ...differing].filter(({ outcome }) => outcome === 'asked').length;
  const parts = [
    `${counted(onlyThere.length, 'entry', 'entries')} only in the file`,
    `${counted(onlyHere.length, 'entry', 'entries')} only here`,
    `${counted(differing.length, 'value')} that ${differing.length === 1 ? 'differs' : 'differ'}`,
  ];
  const question =
    asked === 0
      ? 'A merge leaves nothing to decide.'
      : `A merge leaves ${counted(asked, 'difference')} for you to decide.`;
  return `${parts.join(', ')}. ${question}`;
}

/** Values that stand side by side in the project and wait for somebody to decide. */
export interface OpenDifference {
  readonly record: string;
  readonly field: string;
  readonly where: string;
  readonly what: string;
  readonly sides: readonly (Side & { readonly edit: Edit; readonly label: string })[];
}

export function openDifferences(project: Project): readonly OpenDifference[] {
  return Object.keys(historyOf(project).kept ?? {}).flatMap((record) => openIn(project, record));
}

function openIn(project: Project, record: string): readonly OpenDifference[] {
  const history = historyOf(project);
  const when = whenOf([history]);
  const states = [project];
  const fields = entryOf(history.kept, record) as Readonly<Record<string, Register>> | undefined;
  return Object.entries(fields ?? {}).flatMap(([field, register]) => {
    if (isSetAside(record, field) || !standing(register, field, () => '').asked) return [];
    const [where, what] = [recordInWords(record, states), fieldInWords(record, field)];
    const byMeaning = new Map(register.map((one) => [meaning(one.value), one]));
    const byTime = [...byMeaning.values()].toSorted((a, b) => (when(a).at < when(b).at ? -1 : 1));
    const sides = byTime.map((one) => {
      // What is there is taken as it stands now; the register says only that it is there.
      const isKept = field === whole && one.value !== undefined;
      const value = isKept ? readPart(project, { record, field }) : one.value;
      const says = partInWords(field, one.value, states);
      const edit: Edit = { kind: 'settle', part: { record, field, value } };
      return { value, says, ...when(one), edit, label: `${where}: ${what} settled, ${says}`.slice(0, 200) };
    });
    return [{ record, field, where, what, sides }];
  });
}

/** Of one opening, in one sentence each, for its page and its record. */
export function openDifferencesAt(project: Project, openingId: string): readonly string[] {
  // Most projects hold none, and this is asked for each opening.
  if (!project.history?.kept) return [];
  return openIn(project, addressOf('openings', openingId)).map(
    ({ what, sides }) =>
      `${what} was entered twice: ${sides.map(sideInWords).join('; ')}. Decide which holds.`,
  );
}

/** "90 min (Ann Example, 2026-03-01)". */
export function sideInWords({ says, by, at }: Side): string {
  const who = [by, at.slice(0, 10)].filter((word) => word !== '').join(', ');
  return who === '' ? says : `${says} (${who})`;
}

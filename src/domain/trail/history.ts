import type { Command, Edit } from '../commands/command.ts';
import type { Fact } from '../model/fact.ts';
import { type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { inSequence } from '../model/verdict.ts';
import { verdictSays } from '../review/words.ts';
import { counted } from '../text/counted.ts';
import { Ground, type Said, sentenceOf } from './ground.ts';
import { openingOf, saidOf } from './says.ts';

/** Who did what, and when. */
export interface HistoryLine {
  readonly id: string;
  /** World time; of a verdict without one, its day. */
  readonly at: string;
  readonly by: string;
  readonly says: string;
  /** Openings it is about; empty where it is about the building or the project. */
  readonly openingIds: readonly string[];
}

/** An import is one line; what it did to one opening is told at that opening. */
const mostTold = 12;
/** What is typed into one field without a longer pause is one line. */
const pauseMs = 5 * 60_000;

interface Draft extends Omit<HistoryLine, 'says'> {
  readonly prefix: string;
  readonly said: Said;
}

/**
 * The history of the project, or of one opening, the newest first: from the named edits that undo uses, the log of
 * verdicts, and the stamps that answers and choices carry. Where the list of edits ends, or the file came from
 * elsewhere, the stamps still say who gave the answer that stands.
 */
export function historyLines(
  project: Project,
  commands: readonly Command[],
  openingId?: string,
): readonly HistoryLine[] {
  const ground = new Ground(project, commands);
  const drafts = commands.flatMap((command) => told(project, command, ground, openingId));
  const lines = [
    ...joined(drafts).map(({ prefix, said, ...line }) => ({ ...line, says: `${prefix}${sentenceOf(said)}` })),
    ...stamps(project, commands),
    ...verdicts(project),
  ];
  return lines
    .filter(({ openingIds }) => openingId === undefined || openingIds.includes(openingId))
    .map((line, index) => ({ line, index }))
    .toSorted((a, b) => (a.line.at === b.line.at ? b.index - a.index : a.line.at < b.line.at ? 1 : -1))
    .map(({ line }) => line);
}

function told(
  project: Project,
  { id, at, by, label, edits }: Command,
  ground: Ground,
  openingId: string | undefined,
): readonly Draft[] {
  const prefix = /^(Undo|Redo): /.exec(label)?.[1] ?? '';
  // The log of verdicts tells them itself, with their names; one that is not in it any more is told from here.
  const others = edits.filter((edit) => edit.kind !== 'appendVerdict' || !isOnFile(project, edit.id));
  const told = others.map((edit, index): Draft => {
    const said = saidOf(edit, ground, project);
    const one = openingOf(edit);
    const openingIds = edit.kind === 'appendVerdict' ? edit.value.openingIds : one === undefined ? [] : [one];
    const lost = edit.kind === 'appendVerdict' ? 'Not in the log of verdicts: ' : '';
    return { id: `${id} ${index}`, at, by, openingIds, prefix: prefix === '' ? lost : `${prefix}. `, said };
  });
  if (told.length <= mostTold || openingId !== undefined) return told;
  const openingIds = [...new Set(told.flatMap((one) => one.openingIds))];
  const said = `${label.replace(/\.$/, '')}: ${counted(others.length, 'change')} at ${counted(openingIds.length, 'opening')}.`;
  return [{ id, at, by, openingIds, prefix: '', said }];
}

const isOnFile = ({ verdicts }: Project, id: string) => Object.hasOwn(verdicts, id);

/** Edits of one part that follow each other by one hand are one line, from what stood first to what stood last. */
function joined(drafts: readonly Draft[]): readonly Draft[] {
  const found: Draft[] = [];
  for (const draft of drafts) {
    const last = found.at(-1);
    const goesOn =
      last !== undefined &&
      typeof last.said !== 'string' &&
      typeof draft.said !== 'string' &&
      last.said.key === draft.said.key &&
      last.by === draft.by &&
      last.prefix === draft.prefix &&
      Date.parse(draft.at) - Date.parse(last.at) <= pauseMs;
    if (goesOn && typeof last.said !== 'string' && typeof draft.said !== 'string') {
      found.splice(-1, 1, { ...draft, said: { ...draft.said, from: last.said.from } });
    } else found.push(draft);
  }
  return found;
}

/** Answers and choices that no edit in the list has made: they say themselves who gave them, and when. */
function stamps(project: Project, commands: readonly Command[]): readonly HistoryLine[] {
  const made = new Set(commands.flatMap(({ edits }) => edits.map(stampOf)));
  const ground = new Ground(project, []);
  return openingsInOrder(project).flatMap((opening) =>
    stampedEdits(opening).flatMap(({ edit, at, by }): HistoryLine[] => {
      if (made.has(stampOf(edit))) return [];
      const says = sentenceOf(saidOf(edit, ground, project));
      return [{ id: stampOf(edit), at, by, says, openingIds: [opening.id] }];
    }),
  );
}

interface Stamped {
  readonly edit: Edit;
  readonly at: string;
  readonly by: string;
}

function stampedEdits({ id, facts, override }: Opening): readonly Stamped[] {
  const answers = Object.entries(facts as Readonly<Record<string, Fact<string> | undefined>>).flatMap(
    ([fact, value]): readonly Stamped[] =>
      value?.at === undefined
        ? []
        : [{ edit: { kind: 'setFact', id, fact, value }, at: value.at, by: value.by ?? '' }],
  );
  const chosen: readonly Stamped[] = override
    ? [{ edit: { kind: 'setOverride', id, value: override }, at: override.at, by: override.by }]
    : [];
  return [...answers, ...chosen];
}

function stampOf(edit: Edit): string {
  if (edit.kind === 'setFact') return `${edit.id} ${edit.fact} ${edit.value?.at ?? ''}`;
  if (edit.kind === 'setOverride') return `${edit.id} override ${edit.value?.at ?? ''}`;
  return '';
}

/** Every entry of the log, whatever the list of edits still holds. */
function verdicts({ verdicts: log }: Project): readonly HistoryLine[] {
  return inSequence(log).map((one) => {
    const about = [one.reason, ...one.conditions, one.reference === '' ? '' : `Document: ${one.reference}`];
    const more = about.filter((text) => text !== '').join(' ');
    return {
      id: `verdict ${one.id}`,
      at: one.at ?? one.on,
      by: one.by,
      says: `Entry ${one.sequence} of the log: ${verdictSays[one.verdict]}, dated ${one.on}.${more === '' ? '' : ` ${more}`}`,
      openingIds: one.openingIds,
    };
  });
}

/** The stated rule by which a browser thins the list of edits; `kept` is how many it lists. */
export const historyRule = (kept: number) =>
  `This browser lists the last ${kept.toLocaleString('en-US')} edits of each project. Older ones are dropped, but for verdicts, choices by hand, local amendments, the code basis, comments and questions, which stay. Verdicts stand in the project file as well, and so does who gave the answer that holds today, and when.`;

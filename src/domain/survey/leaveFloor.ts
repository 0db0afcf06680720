import type { Decision } from '../decide/decision.ts';
import { couldStillChange } from '../decide/whatMatters.ts';
import { fieldInfo } from '../model/fields.ts';
import { compareMarks, type Opening, openingsInOrder, type Project } from '../model/project.ts';
import { missingForOrder, orderState } from '../sets/forOrder.ts';
import { R165 } from '../rules/access/R-165-unlawful-lock-found.ts';
import { stepInWords } from '../words/steps.ts';
import { photosMissing, photosMissingInWords } from './photos.ts';
import { counted } from '../text/counted.ts';
import { midSentence } from '../text/midSentence.ts';

export interface DoorLeft {
  readonly id: string;
  readonly mark: string;
  /** Why it stands in this list; empty where the list says all. */
  readonly why: string;
}

/** What a surveyor reads before the stairs: what is done on this floor and what somebody has to come back for. */
export interface FloorLeft {
  readonly done: readonly DoorLeft[];
  /** Begun, or not begun: something still has to be asked. */
  readonly open: readonly DoorLeft[];
  /** Somebody could not tell, and it counts. */
  readonly revisit: readonly DoorLeft[];
  /** Marks within a run that no opening carries. */
  readonly missingMarks: readonly string[];
  /** Locks that keep people in: to be reported today. */
  readonly unlawful: readonly DoorLeft[];
  /** Somebody could not tell, a picture would show it, and there is none. */
  readonly photosMissing: readonly DoorLeft[];
  readonly says: string;
}

export function leaveFloor(
  project: Project,
  floorId: string | null,
  decisions: ReadonlyMap<string, Decision>,
): FloorLeft {
  const here = openingsInOrder(project).filter((one) => one.floorId === floorId);
  const lists = { done: [], open: [], revisit: [], unlawful: [], photos: [] } as Record<string, DoorLeft[]>;
  for (const opening of here) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    const door = (why: string): DoorLeft => ({ id: opening.id, mark: opening.mark, why });
    const unlawful = decision.findings.filter(({ rule }) => rule.id === R165.id);
    if (unlawful.length > 0)
      lists['unlawful']?.push(door(unlawful.map((step) => stepInWords(step, decision).sentence).join(' ')));
    const photos = photosMissing(project, opening);
    if (photos.length > 0) lists['photos']?.push(door(photosMissingInWords(photos)));
    const waits = unknownThatCounts(project, opening, decision);
    if (orderState(project, opening, decision) === 'complete') lists['done']?.push(door(''));
    else if (waits.length > 0) lists['revisit']?.push(door(`Not known: ${waits.join(', ')}.`));
    else lists['open']?.push(door(''));
  }
  const { done = [], open = [], revisit = [], unlawful = [], photos = [] } = lists;
  return {
    done,
    open,
    revisit,
    unlawful,
    missingMarks: gapsIn(here.map((one) => one.mark)),
    photosMissing: photos,
    says: [`${counted(done.length, 'door')} of ${here.length} done.`, photosLeft(photos.length)]
      .join(' ')
      .trim(),
  };
}

const photosLeft = (doors: number) => (doors === 0 ? '' : `Photos are missing at ${counted(doors, 'door')}.`);

function unknownThatCounts(project: Project, opening: Opening, decision: Decision): readonly string[] {
  const asked = (opening.facts as Readonly<Record<string, { is: string } | undefined>>) ?? {};
  const could = couldStillChange(project, opening, decision);
  const forOrder = missingForOrder(project, opening, decision).filter((key) => asked[key]?.is === 'unknown');
  return [...new Set([...could, ...forOrder])].map((key) => midSentence(fieldInfo(key).label));
}

/** Marks left out between two that are there: 2-03 and 2-05 without 2-04. Longer gaps are no forgotten door. */
const longestGap = 3;

export function gapsIn(marks: readonly string[]): readonly string[] {
  const numbers = marks.flatMap((mark) => {
    const parts = /^(.*?)(\d+)$/.exec(mark);
    return parts ? [{ start: parts[1] ?? '', digits: (parts[2] ?? '').length, at: Number(parts[2]) }] : [];
  });
  const missing: string[] = [];
  for (const one of numbers) {
    const later = numbers
      .filter((other) => other.start === one.start && other.digits === one.digits && other.at > one.at)
      .map((other) => other.at);
    const next = Math.min(...later);
    if (!Number.isFinite(next) || next - one.at > longestGap) continue;
    for (let at = one.at + 1; at < next; at++) missing.push(one.start + String(at).padStart(one.digits, '0'));
  }
  return missing.toSorted(compareMarks);
}

export const leaveFloorWords = {
  title: 'Before you leave the floor',
  done: 'Done',
  open: 'Still to be asked',
  revisit: 'To come back for',
  photosMissing: 'Photos still to take',
  missingMarks: 'Marks missing in a run',
  unlawful: 'Locks to report today',
  none: 'None',
} as const;

import type { Project } from '../../domain/model/project.ts';
import type { Decisions } from '../../domain/schedules/openings.ts';
import { type OrderState, orderStateWords } from '../../domain/schedules/forOrder.ts';
import { type HardwareSet, hardwareSets, type SetLine } from '../../domain/schedules/sets.ts';
import { numberingInWords, numberStateWords } from '../../domain/schedules/setNumbers.ts';
import { type SharedLine, sharedEquipment } from '../../domain/schedules/shared.ts';
import { waitsFor, type WithoutSet, withoutSet } from '../../domain/schedules/withoutSet.ts';
import { countingShort } from '../../domain/decide/counting.ts';
import { counted } from '../../domain/text/counted.ts';

export interface PrintedLine extends SetLine {
  /** Quantities as they print. */
  readonly eachSays: string;
  readonly totalSays: string;
}

export interface SetBlock {
  readonly id: string;
  /** Beside the number, where it was given after others were fixed. */
  readonly numberSays: string;
  readonly title: string;
  /** What the openings of this set have in common besides the parts. */
  readonly says: string;
  readonly count: string;
  readonly marks: readonly string[];
  /** Openings that may not be ordered yet, with what they wait for; empty where all may. */
  readonly notYet: string;
  readonly lines: readonly PrintedLine[];
  /** Work on door and frame, with its trade, and its openings where not all need it. */
  readonly siteWork: readonly { readonly trade: string; readonly says: string }[];
}

export interface SetSheet {
  readonly says: string;
  /** How to read the lines when they are priced. */
  readonly notes: readonly string[];
  readonly sets: readonly SetBlock[];
  /** What the sets show only a share of. */
  readonly shared: readonly SharedLine[];
  /** Openings that have no set yet, each with the reason, so that none is missed when parts are counted. */
  readonly without: readonly WithoutSet[];
}

export function setSheet(project: Project, decisions: Decisions): SetSheet {
  const sets = hardwareSets(project, decisions);
  return {
    says: counted(sets.length, 'set'),
    notes: [
      ...numberingInWords(project, sets),
      'By names the trade that furnishes and installs the line, unless the contract divides it otherwise.',
      'incl.: the line asks something of another line of its set and is no piece of its own.',
      'kept: seen in place by the survey; it stays and is not priced. What an existing opening hangs on stays as well.',
      'Site work under a set is done at each of its openings, or at those it names. The fit of the device and a rule may name one job in two sentences.',
      'share: bought once for several openings; priced under Shared equipment at the end.',
      'Leaves, frames, glazing, stops, plates and thresholds are not in these sets. Maker, finish and keying are not decided here.',
    ],
    sets: sets.map((set) => blockOf(set, project, decisions)),
    shared: sharedEquipment(project, decisions),
    without: withoutSet(project, decisions),
  };
}

function blockOf(set: HardwareSet, project: Project, decisions: Decisions): SetBlock {
  const waiting = (state: OrderState) =>
    set.openings.flatMap(({ id, mark, order }) => {
      const [opening, decision] = [project.openings[id], decisions.get(id)];
      return order === state && opening && decision
        ? [`${mark} (${waitsFor(project, opening, decision)})`]
        : [];
    });
  const notYet = (['unsettled', 'incomplete'] as const).flatMap((state) => {
    const marks = waiting(state);
    return marks.length === 0 ? [] : [`${orderStateWords[state]}: ${marks.join('; ')}`];
  });
  return {
    id: set.id,
    numberSays: set.numberState === 'new' ? numberStateWords.new : '',
    title: set.title,
    says: [
      `Way out: ${set.release}`,
      `Fire label: ${set.label}`,
      `Leaves: ${set.leaves}`,
      ...(set.handing === '' ? [] : [`Hand: ${set.handing}`]),
      ...(set.work === '' ? [] : [set.work]),
    ].join('  ·  '),
    count: counted(set.openings.length, 'opening'),
    marks: set.openings.map((opening) => opening.mark),
    notYet: notYet.join('. '),
    siteWork: set.siteWork.map(({ trade, says, ruleId, marks }) => {
      const at = marks.length < set.openings.length ? `At ${marks.join(', ')}: ` : '';
      return { trade, says: `${at}${says}${ruleId === '' ? '' : ` ${ruleId}`}` };
    }),
    lines: set.lines.map((line) => ({
      ...line,
      eachSays: line.counting === 'bought' ? String(line.each) : countingShort[line.counting],
      totalSays: line.counting === 'bought' ? String(line.total) : '',
    })),
  };
}

import type { Project } from '../../domain/model/project.ts';
import type { Decisions } from '../../domain/decide/decision.ts';
import { notYetOrdered, type OrderState, orderStateWords } from '../../domain/sets/forOrder.ts';
import type { ItemTerms } from '../../domain/hardware/itemTerms.ts';
import {
  type Block,
  blocks,
  type HardwareSet,
  hardwareSets,
  setInWords,
  type SetLine,
} from '../../domain/sets/sets.ts';
import { numberingInWords, numberStateWords } from '../../domain/sets/setNumbers.ts';
import type { SetCondition } from '../../domain/sets/setConditions.ts';
import type { SiteWork } from '../../domain/sets/siteWork.ts';
import { type SharedLine, sharedEquipment } from '../../domain/sets/shared.ts';
import { waitsFor, type WithoutSet, withoutSet } from '../../domain/sets/withoutSet.ts';
import { countingShort } from '../../domain/hardware/counting.ts';
import { counted } from '../../domain/text/counted.ts';

export interface PrintedLine {
  readonly key: string;
  /** Quantities as they print. */
  readonly newSays: string;
  readonly keptSays: string;
  readonly name: string;
  readonly standard: string;
  /** Device, fail mode, function and volts, and the openings where not all have the line. */
  readonly says: string;
  readonly finish: string;
  readonly keySet: string;
  /** "Locksmith; wired Security contractor". */
  readonly who: string;
  readonly section: string;
  readonly rules: string;
}

/** Lines of one kind under their head. */
export interface LineBlock {
  readonly head: string;
  readonly lines: readonly PrintedLine[];
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
  readonly blocks: readonly LineBlock[];
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
      'By names who supplies, installs and wires the line: as the item book says, or as is usual in the trade.',
      'New counts what is bought for all openings of the set. incl.: the line asks something of another line and is no piece of its own.',
      'Kept counts what the survey saw in place: it stays and is not priced. What an existing opening hangs on stays as well.',
      'Work counts the openings where it is done. The fit of the device and a rule may name one job in two sentences.',
      'share: bought once for several openings; priced under Shared equipment at the end.',
      'Leaves, frames, glazing, stops, plates and thresholds are not in these sets. Makers are not named here; a finish or key set that nobody stated says so.',
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
  const notYet = notYetOrdered.flatMap((state) => {
    const marks = waiting(state);
    return marks.length === 0 ? [] : [`${orderStateWords[state]}: ${marks.join('; ')}`];
  });
  return {
    id: setInWords(set),
    numberSays:
      set.numberState === 'new' || set.numberState === 'revised' ? numberStateWords[set.numberState] : '',
    title: set.title,
    says: [
      `Egress: ${set.release}`,
      `Fire label: ${set.label}`,
      `Leaves: ${set.leaves}`,
      ...(set.handing === '' ? [] : [`Hand: ${set.handing}`]),
      ...(set.work === '' ? [] : [set.work]),
    ].join('  ·  '),
    count: counted(set.openings.length, 'opening'),
    marks: set.openings.map((opening) => opening.mark),
    notYet: notYet.join('. '),
    blocks: blocksOf(set),
  };
}

function blocksOf(set: HardwareSet): readonly LineBlock[] {
  return (Object.keys(blocks) as Block[])
    .map((block) => {
      const lines = set.lines.filter((line) => line.block === block).map(printed);
      const jobs = block === 'work' ? set.siteWork.map((job) => printedJob(job, set.openings.length)) : [];
      const conditions =
        block === 'condition' ? set.conditions.map((one) => printedCondition(one, set.openings.length)) : [];
      return { head: blocks[block], lines: [...lines, ...jobs, ...conditions] };
    })
    .filter((block) => block.lines.length > 0);
}

const atMarks = (marks: readonly string[]) => (marks.length === 0 ? '' : `at ${marks.join(', ')}`);

function printed(line: SetLine): PrintedLine {
  const { counting, total, kept, marks, terms } = line;
  return {
    key: line.item,
    newSays: counting === 'bought' ? String(total) : counting === 'kept' ? '' : countingShort[counting],
    keptSays: kept > 0 ? String(kept) : '',
    name: line.name,
    standard: line.standard,
    says: [line.detail, atMarks(marks)].filter((one) => one !== '').join(' · '),
    // What stays has its finish and its key already.
    finish: total > 0 ? terms.finish : '',
    keySet: total > 0 ? terms.keySet : '',
    who: whoInWords(terms),
    section: terms.section,
    rules: line.ruleIds.join(', '),
  };
}

/** Work on door and frame that is no piece of hardware: one job at each of its openings. */
function printedJob({ trade, says, ruleId, marks }: SiteWork, openings: number): PrintedLine {
  return {
    key: trade + says,
    newSays: String(marks.length),
    keptSays: '',
    name: says,
    standard: '',
    says: marks.length < openings ? atMarks(marks) : '',
    finish: '',
    keySet: '',
    who: trade,
    section: '',
    rules: ruleId,
  };
}

/** It has no trade and no price of its own: whoever builds or operates the opening keeps it. */
function printedCondition({ says, from, marks }: SetCondition, openings: number): PrintedLine {
  return {
    key: `${says} ${from}`,
    newSays: String(marks.length),
    keptSays: '',
    name: says,
    standard: '',
    says: marks.length < openings ? atMarks(marks) : '',
    finish: '',
    keySet: '',
    who: '',
    section: '',
    rules: from,
  };
}

function whoInWords({ suppliedBy, installedBy, wiredBy }: ItemTerms): string {
  const both = suppliedBy === installedBy ? suppliedBy : `${suppliedBy}; installed ${installedBy}`;
  return wiredBy === '' || wiredBy === installedBy ? both : `${both}; wired ${wiredBy}`;
}

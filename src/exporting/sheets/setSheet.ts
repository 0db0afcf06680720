import type { Project } from '../../domain/model/project.ts';
import type { Decisions } from '../../domain/schedules/openings.ts';
import { type HardwareSet, hardwareSets, type SetLine } from '../../domain/schedules/sets.ts';
import { counted } from './titleBlock.ts';

export interface PrintedLine extends SetLine {
  /** Quantities as they print. */
  readonly eachSays: string;
  readonly totalSays: string;
}

export interface SetBlock {
  readonly id: string;
  readonly title: string;
  /** What the openings of this set have in common besides the parts. */
  readonly says: string;
  readonly count: string;
  readonly marks: readonly string[];
  readonly unsettled: string;
  readonly lines: readonly PrintedLine[];
}

export interface SetSheet {
  readonly says: string;
  /** How to read the lines when they are priced. */
  readonly notes: readonly string[];
  readonly sets: readonly SetBlock[];
  /** Openings that have no set yet, so that none is missed when parts are counted. */
  readonly without: readonly string[];
}

export function setSheet(project: Project, decisions: Decisions): SetSheet {
  const sets = hardwareSets(project, decisions);
  const placed = new Set(sets.flatMap((set) => set.openings.map((opening) => opening.id)));
  return {
    says: counted(sets.length, 'set'),
    notes: [
      'By names the trade that furnishes and installs the line, unless the contract divides it otherwise.',
      'A line marked incl. asks something of another line of its set and is no piece of its own.',
      'At an existing opening, hardware in place that already does what a line asks need not be bought again. Lock power supplies are counted one for each opening and may be shared.',
      'Maker, finish and keying are not decided here.',
    ],
    sets: sets.map(blockOf),
    without: Object.values(project.openings)
      .filter((opening) => !placed.has(opening.id))
      .map((opening) => opening.mark)
      .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true })),
  };
}

function blockOf(set: HardwareSet): SetBlock {
  const open = set.openings.filter((opening) => !opening.settled).map((opening) => opening.mark);
  return {
    id: set.id,
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
    unsettled: open.length === 0 ? '' : `Not settled yet, do not order: ${open.join(', ')}`,
    lines: set.lines.map((line) => ({
      ...line,
      eachSays: line.included ? 'incl.' : String(line.each),
      totalSays: line.included ? '' : String(line.total),
    })),
  };
}

import type { Project } from '../../domain/model/project.ts';
import { type OpeningRow, scheduleRows } from '../../domain/schedules/openings.ts';
import { type Decisions } from '../../domain/decide/decision.ts';
import { flagsOf, remarksOf } from './flags.ts';
import { counted } from '../../domain/text/counted.ts';

/** One column: its head, its share of the width, and the family of columns it stands under. */
export interface ScheduleColumn {
  readonly key: string;
  readonly head: string;
  /** Per cent of the width; a mark takes what it needs. */
  readonly share: number;
  readonly family: (typeof families)[number];
}

const families = ['Opening', 'Door and frame', 'Fire and egress', 'Locking', 'Standing'] as const;

const column = (
  key: string,
  head: string,
  share: number,
  family: ScheduleColumn['family'],
): ScheduleColumn => ({ key, head, share, family });

export const scheduleColumns = [
  column('mark', 'Mark', 4, 'Opening'),
  column('from', 'From', 6, 'Opening'),
  column('to', 'To', 6, 'Opening'),
  column('doorType', 'Door type', 5.5, 'Door and frame'),
  column('size', 'W × H × T', 5, 'Door and frame'),
  column('leaf', 'Leaf', 5.5, 'Door and frame'),
  column('frame', 'Frame', 5.5, 'Door and frame'),
  column('handing', 'Hand', 3, 'Door and frame'),
  column('label', 'Label', 3.5, 'Fire and egress'),
  column('egressRole', 'Egress role', 6.5, 'Fire and egress'),
  column('set', 'Set', 4, 'Locking'),
  column('device', 'Locked by', 7.5, 'Locking'),
  column('failMode', 'Power lost', 4.5, 'Locking'),
  column('release', 'Egress', 7.5, 'Locking'),
  column('fireAlarm', 'On fire alarm', 9.5, 'Locking'),
  column('flags', 'Flags', 9.5, 'Standing'),
  column('remarks', 'Remarks', 7, 'Standing'),
] as const;

export interface ScheduleCell {
  readonly key: string;
  readonly says: readonly string[];
  /** Must not be passed over. */
  readonly strong: boolean;
}

export interface ScheduleLine {
  readonly id: string;
  readonly mark: string;
  /** One cell per column behind the mark, each of one or more paragraphs. */
  readonly cells: readonly ScheduleCell[];
}

export interface FloorGroup {
  readonly floor: string;
  readonly says: string;
  readonly lines: readonly ScheduleLine[];
}

export interface ScheduleSheet {
  readonly families: readonly { readonly name: string; readonly span: number }[];
  readonly floors: readonly FloorGroup[];
  readonly says: string;
  /** How to read what is not said in a cell. */
  readonly notes: readonly string[];
}

/** The door schedule: every opening of the project, by floor, with the words that print in each cell. */
export function scheduleSheet(project: Project, decisions: Decisions): ScheduleSheet {
  const rows = scheduleRows(project, decisions);
  const byFloor = new Map<string, OpeningRow[]>();
  for (const row of rows) {
    const list = byFloor.get(row.floor);
    if (list) list.push(row);
    else byFloor.set(row.floor, [row]);
  }
  return {
    families: families.map((name) => ({
      name,
      span: scheduleColumns.filter((one) => one.family === name).length,
    })),
    floors: [...byFloor].map(([floor, list]) => ({
      floor: floor === '' ? 'Floor not stated' : floor,
      says: counted(list.length, 'opening'),
      lines: list.map((row) => lineOf(row, decisions)),
    })),
    says: counted(rows.length, 'opening'),
    notes: [
      'A dash means not surveyed or not chosen yet.',
      'From is the secure side, on which a credential is asked for; To is the side people leave from. Hand is read from the secure side.',
      'Label is the fire rating of the door in minutes. Fail safe and fail secure refer to the secure side only: what a person leaving does is under Egress.',
    ],
  };
}

const nothing = '—';

function lineOf(row: OpeningRow, decisions: Decisions): ScheduleLine {
  const decision = decisions.get(row.openingId);
  const flags = decision ? flagsOf(row, decision) : [];
  const words: Readonly<Record<string, readonly string[]>> = {
    flags: flags.length > 0 ? flags : ['None'],
    remarks: remarksOf(row),
  };
  const plain = row as unknown as Readonly<Record<string, string>>;
  return {
    id: row.openingId,
    mark: row.mark,
    cells: scheduleColumns.slice(1).map(({ key }) => ({
      key,
      says: words[key] ?? [plain[key] || nothing],
      strong: key === 'flags' && flags.length > 0,
    })),
  };
}

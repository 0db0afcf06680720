import { counted } from '../../domain/text/counted.ts';
import { cutLines, cutLists } from '../../exporting/sheets/parts.ts';
import { registerInWords } from '../../exporting/sheets/reviewRegister.ts';
import { BillTable } from './BillTable.tsx';
import { BuildingFindings } from './BuildingFindings.tsx';
import { DoorSchedule } from './DoorSchedule.tsx';
import { HardwareSets } from './HardwareSets.tsx';
import { LoadsAndExits } from './LoadsAndExits.tsx';
import { PacketSheets } from './PacketSheets.tsx';
import { Paper } from './Paper.tsx';
import { ReviewRegister } from './ReviewRegister.tsx';
import { PowerSheets } from './PowerSheets.tsx';
import { SequenceSheets } from './SequenceSheets.tsx';
import { type OfPiece, isFirst, isLast, titleOf } from './sheetProps.ts';

export function SchedulePart(props: OfPiece) {
  const { data, paper, piece } = props;
  const sheet = data.schedule();
  return (
    <Paper id="schedule" paper={paper} title={titleOf(props, sheet.says)}>
      <DoorSchedule
        sheet={{
          ...sheet,
          floors: cutLines(sheet.floors, piece),
          notes: isLast(piece) ? sheet.notes : [],
        }}
      />
    </Paper>
  );
}

export function SetsPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const sheet = data.sets();
  const [sets, shared, without] = cutLists([sheet.sets, sheet.shared, sheet.without] as const, piece);
  return (
    <Paper id="sets" paper={paper} title={titleOf(props, sheet.says)}>
      <HardwareSets sheet={{ ...sheet, sets, shared, without, notes: isFirst(piece) ? sheet.notes : [] }} />
    </Paper>
  );
}

export function BillPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const whole = piece.id === 'bill' ? data.priced() : data.quantities();
  const lines = whole.blocks.reduce((sum, block) => sum + block.lines.length, 0);
  const [, allowances] = cutLists([Array.from({ length: lines }), whole.allowances] as const, piece);
  const rest = isLast(piece) ? {} : { totals: [], alternates: [], notes: [] };
  const sheet = { ...whole, blocks: cutLines(whole.blocks, piece), allowances, ...rest };
  return (
    <Paper id={piece.id} paper={paper} title={titleOf(props, whole.says)}>
      <BillTable sheet={sheet} />
    </Paper>
  );
}

export function SequencePart(props: OfPiece) {
  const { data, paper, piece } = props;
  const { says, sets, without } = data.sequence();
  return (
    <Paper id="sequence" paper={paper} title={titleOf(props, says)}>
      <SequenceSheets
        pages={{ says, sets: sets.slice(piece.from, piece.to), without: isLast(piece) ? without : [] }}
      />
    </Paper>
  );
}

export function PowerPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const sheet = data.power();
  return (
    <Paper id="power" paper={paper} title={titleOf(props, sheet.says)}>
      <PowerSheets
        sheet={{ ...sheet, wirings: sheet.wirings.slice(Math.max(0, piece.from - 1), piece.to - 1) }}
        onlyWirings={!isFirst(piece)}
      />
    </Paper>
  );
}

export function RegisterPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const register = data.register();
  const [building, entries] = cutLists([register.building, register.entries] as const, piece);
  return (
    <Paper id="register" paper={paper} title={titleOf(props, counted(register.entries.length, 'opening'))}>
      <ReviewRegister
        entries={entries}
        building={building}
        says={registerInWords(register.entries, register.building.length)}
      />
    </Paper>
  );
}

export function PacketPart(props: OfPiece) {
  const { data, letter, paper, piece } = props;
  const sheet = data.packet();
  const [questions, openings] = cutLists([sheet.questions, sheet.openings] as const, piece);
  return (
    <Paper id="packet" paper={paper} title={titleOf(props, sheet.says)}>
      <PacketSheets sheet={{ ...sheet, questions, openings }} letter={isFirst(piece) ? letter : ''} />
    </Paper>
  );
}

export function FindingsPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const sheet = data.findings();
  const notes = isLast(piece) ? sheet.notes : [];
  return (
    <Paper id="findings" paper={paper} title={titleOf(props, sheet.says)}>
      <BuildingFindings sheet={{ ...sheet, groups: cutLines(sheet.groups, piece), notes }} />
    </Paper>
  );
}

export function LoadsPart(props: OfPiece) {
  const { data, paper, piece } = props;
  const sheet = data.loads();
  const notes = isFirst(piece) ? sheet.notes : [];
  return (
    <Paper id="loads" paper={paper} title={titleOf(props, sheet.says)}>
      <LoadsAndExits sheet={{ ...sheet, floors: cutLines(sheet.floors, piece), notes }} />
    </Paper>
  );
}

import { allowanceWords, type Bill } from '../../domain/bid/bill.ts';
import { unitWords } from '../../domain/bid/billRow.ts';
import type { Project } from '../../domain/model/project.ts';
import { openingLines } from '../../domain/sets/openingLines.ts';
import { type OpeningColumn, openingColumns, scheduleRows } from '../../domain/schedules/openings.ts';
import { type Decisions } from '../../domain/decide/decision.ts';
import { blocks, hardwareSets } from '../../domain/sets/sets.ts';
import { sharedEquipment } from '../../domain/sets/shared.ts';
import { surveyTable } from '../csv/factsCsv.ts';
import { openingLineColumns, openingLineRows, setColumns, setRows } from '../csv/setsCsv.ts';
import type { CoverSheet } from '../sheets/coverSheet.ts';
import type { Part } from './workbook.ts';

const columns = Object.keys(openingColumns) as readonly OpeningColumn[];

/** Every part of the bid as a table. Without prices it is the copy for bidders, and no column of money is in it. */
export function projectParts(
  project: Project,
  decisions: Decisions,
  bill: Bill,
  cover: CoverSheet,
  priced: boolean,
): readonly Part[] {
  const sets = hardwareSets(project, decisions);
  const survey = surveyTable(project);
  return [
    {
      name: 'Cover',
      head: ['What', 'Is'],
      rows: [
        ['Project', cover.name],
        ...cover.facts.map(({ label, value }) => [label, value]),
        ['Standing', cover.standing],
        ...cover.missing.map((says) => ['Missing', says]),
        ...cover.questions.map((says) => ['Open question', says]),
      ],
    },
    {
      name: 'Openings',
      head: columns.map((column) => openingColumns[column]),
      rows: scheduleRows(project, decisions).map((row) => columns.map((column) => row[column])),
    },
    { name: 'Hardware sets', head: setColumns, rows: setRows(sets, sharedEquipment(project, decisions)) },
    {
      name: 'Hardware by opening',
      head: openingLineColumns,
      rows: openingLineRows(openingLines(project, decisions, sets)),
    },
    billPart(project, bill, priced),
    {
      name: 'Allowances',
      head: priced ? ['Mark', 'Because', 'From', 'To'] : ['Mark', 'Because'],
      rows: bill.allowances.map(({ mark, because, low, high }) => [
        mark,
        allowanceWords[because],
        ...(priced ? [inUnits(low), inUnits(high)] : []),
      ]),
      ...(priced ? { formats: { From: money, To: money } } : {}),
    },
    { name: 'Survey', ...survey },
  ];
}

const money = '#,##0.00';
const inUnits = (cents: number | null) => (cents === null ? null : cents / 100);

function billPart({ bid }: Project, bill: Bill, priced: boolean): Part {
  const [unitPrice, amount] = [`Unit price (${bid.currency})`, `Amount (${bid.currency})`];
  return {
    name: priced ? 'Pricing' : 'Quantities',
    head: [
      'Block',
      'Quantity',
      'Unit',
      'Item',
      'Description',
      'Finish',
      'Key set',
      'Section',
      'By',
      'Marks',
      ...(priced ? [unitPrice, amount] : []),
    ],
    rows: bill.rows.map((row) => [
      blocks[row.block],
      row.quantity,
      unitWords[row.unit],
      row.name,
      row.detail,
      row.finish,
      row.keySet,
      row.section,
      row.trade,
      row.marks.join('; '),
      ...(priced ? [inUnits(row.unitPrice), inUnits(row.amount)] : []),
    ]),
    formats: { Quantity: '#,##0.##', ...(priced ? { [unitPrice]: money, [amount]: money } : {}) },
  };
}

import { factAt, type AnyFact } from '../../domain/model/fact.ts';
import { buildingHeading } from '../../domain/import/headers.ts';
import {
  buildingFactKeys,
  factKeys,
  type FactKey,
  fieldInfo,
  type AnyValue,
} from '../../domain/model/fields.ts';
import { writeCell } from '../../domain/survey/readValue.ts';
import { type Opening, openingsInOrder, type Project } from '../../domain/model/project.ts';
import { csvText } from './cells.ts';

/**
 * The survey as a file that can be read back: one column per fact that any opening has, under its key. A value
 * that is only assumed says so in its cell; "unknown" was asked without an answer; empty was never asked.
 */
export function factsCsv(project: Project): string {
  const { head, rows } = surveyTable(project);
  return csvText(head, rows);
}

export interface SurveyTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function surveyTable(project: Project): SurveyTable {
  const openings = openingsInOrder(project);
  const keys = factKeys.filter((key) => openings.some((opening) => factAt(opening.facts, key) !== undefined));
  // Facts of the building stand in every row, because a table has no other place for them.
  const ofBuilding = buildingFactKeys.filter((key) => project.building[key] !== undefined);
  const chosen = openings.some(({ override }) => override !== null);
  const modeled = openings.some(({ externalId }) => externalId !== undefined);
  return {
    head: [
      'mark',
      'floor',
      'from',
      'to',
      ...keys,
      ...ofBuilding.map(buildingHeading),
      ...(chosen ? ['choice by hand', 'reason of the choice', 'chosen by', 'chosen at'] : []),
      ...(modeled ? ['GlobalId'] : []),
      'notes',
    ],
    rows: openings.map((opening) => [
      opening.mark,
      nameOf(project.floors, opening.floorId),
      nameOf(project.spaces, opening.fromSpaceId),
      nameOf(project.spaces, opening.toSpaceId),
      ...keys.map((key) => factCell(key, factAt(opening.facts, key))),
      ...ofBuilding.map((key) => factCell(key, project.building[key])),
      ...(chosen ? choiceCells(opening) : []),
      ...(modeled ? [opening.externalId ?? ''] : []),
      opening.notes,
    ]),
  };
}

function choiceCells({ override }: Opening): readonly string[] {
  return override === null
    ? ['', '', '', '']
    : [override.candidate, override.reason, override.by, override.at];
}

function factCell(key: FactKey, fact: AnyFact | undefined): string {
  return writeCell(fact, (value) => inCell(key, value));
}

function inCell(key: FactKey, value: AnyValue): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const unit = fieldInfo(key).unit;
  return typeof value === 'number' && unit !== undefined ? `${value} ${unit}` : String(value);
}

function nameOf(things: Readonly<Record<string, { readonly name: string }>>, id: string | null): string {
  return id !== null && Object.hasOwn(things, id) ? (things[id]?.name ?? '') : '';
}

import type { Imported } from '../../src/domain/import/csv.ts';
import { undecidedInWords } from '../../src/domain/import/words.ts';
import type { Fact } from '../../src/domain/model/fact.ts';

const factsInWords = (facts: object): string =>
  Object.entries(facts as Record<string, Fact<unknown>>)
    .map(([key, fact]) =>
      fact.is === 'unknown'
        ? `${key} unknown`
        : `${key} ${String(fact.value)}${fact.is === 'assumed' ? ` (${fact.from})` : ''}`,
    )
    .join(', ');

/** All that an import found, one line each. */
export function inWords(read: Imported): readonly string[] {
  const named = new Map([...read.floors, ...read.spaces].map(({ id, name }) => [id, name] as const));
  const name = (id: string | null) => (id === null ? '–' : (named.get(id) ?? id));
  return [
    ...read.openings.map((one) =>
      [
        `${one.mark}: ${factsInWords(one.facts)}`,
        `${name(one.floorId)}, ${name(one.fromSpaceId)} to ${name(one.toSpaceId)}`,
        one.externalId ?? '',
        one.override ? JSON.stringify(one.override) : '',
        read.meets.get(one.id) ?? '',
        one.notes === '' ? '' : `notes ${JSON.stringify(one.notes)}`,
      ]
        .filter((part) => part !== '' && part !== '–, – to –')
        .join(' | '),
    ),
    ...read.floors.map(({ name: floor, level }) => `floor ${floor} at ${level}`),
    ...read.spaces.map(({ name: space, kind, floorId }) => `space ${space}, ${kind}, ${name(floorId)}`),
    ...(Object.keys(read.building).length > 0 ? [`building: ${factsInWords(read.building)}`] : []),
    ...read.problems.map(
      ({ row, column, says, refuses }) => `${refuses ? 'REFUSED' : 'said'} ${row}, ${column}: ${says}`,
    ),
    ...read.refused.map(({ row, mark, cells }) => `left out ${row}: ${mark} (${cells.length} cells)`),
    ...read.skipped.map(({ row, is, why }) => `${is} ${row.number}: ${why}`),
    ...read.undecided.map((word) => `${undecidedInWords(word)} ${word.minutes.join(' or ')} (${word.key})`),
  ];
}

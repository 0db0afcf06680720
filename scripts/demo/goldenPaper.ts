import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import { type Opening, openingsInOrder, type Project } from '../../src/domain/model/project.ts';
import { articleOf } from '../../src/domain/hardware/article.ts';
import { setContent } from '../../src/domain/hardware/content.ts';
import { unstated } from '../../src/domain/hardware/itemTerms.ts';
import { leanedOn } from '../../src/domain/schedules/leanedOn.ts';
import { oneLineOf } from '../../src/domain/schedules/oneLine.ts';
import { openingLines } from '../../src/domain/sets/openingLines.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { compareProject, otherBasisInWords, otherBasisOf } from '../../src/domain/schedules/otherBasis.ts';
import { pointToPoint } from '../../src/domain/schedules/pointToPoint.ts';
import { hardwareSets } from '../../src/domain/sets/sets.ts';
import { sharedEquipment } from '../../src/domain/sets/shared.ts';
import { wholeSignature } from '../../src/domain/hardware/signature.ts';
import { waitsFor, withoutSet } from '../../src/domain/sets/withoutSet.ts';

/** A value as one readable line: `name=value`, empty ones left out, lists in brackets. */
function line(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(line).join('; ')}]`;
  if (typeof value !== 'object' || value === null) return String(value);
  return Object.entries(value)
    .filter(([, one]) => one !== '' && one !== undefined && !(Array.isArray(one) && one.length === 0))
    .map(([name, one]) => `${name}=${line(one)}`)
    .join(', ');
}

type Part = (project: Project, decisions: ReadonlyMap<string, Decision>) => readonly string[];

const told = (head: string, value: unknown) => `${head}: ${line(value)}`;

const sets: Part = (project, decisions) =>
  hardwareSets(project, decisions).flatMap(({ lines, openings, ...set }) => [
    '',
    `## ${set.id}`,
    told('set', { ...set, openings: openings.map(({ mark, order }) => `${mark} ${order}`) }),
    ...lines.map(({ item, ...part }) => told(item, part)),
  ]);

const openings: Part = (project, decisions) => {
  const rows = new Map(scheduleRows(project, decisions).map((row) => [row.openingId, row]));
  return each(project, decisions, (opening, decision) => [
    told('row', rows.get(opening.id)),
    told(
      'leaned on',
      leanedOn(decision).map(({ label, value }) => `${label}: ${value}`),
    ),
    told('waits for', waitsFor(project, opening, decision)),
    told('content', setContent(decision)),
    told('signature', wholeSignature(decision)),
  ]);
};

const lines: Part = (project, decisions) => {
  const all = openingLines(project, decisions, hardwareSets(project, decisions));
  return each(project, decisions, (opening, decision) =>
    all
      .filter(({ openingId }) => openingId === opening.id)
      .flatMap(({ quantity, item, counting, block, detail, ruleIds, ...shared }, index) => {
        const { order, set, floorId } = shared;
        const first = index === 0 ? [told('all', { set, order, floorId })] : [];
        const article = articleOf(item, decision);
        return [...first, told(`${quantity} ${item}`, { counting, block, article, detail, ruleIds })];
      }),
  );
};

/** Most doors are wired like another one, and are not told twice. */
const wires: Part = (project, decisions) => {
  const seen = new Set<string>();
  const once = (text: string) => {
    const isNew = !seen.has(text);
    seen.add(text);
    return isNew ? [text] : [];
  };
  return each(project, decisions, (_opening, decision) => {
    const drawn = oneLineOf(decision);
    if (!drawn) return [];
    const gauges = drawn.circuit.length % 2 === 0 ? ([18, 14] as const) : [];
    return [...once(told('one line', drawn)), ...once(told('wires', pointToPoint(decision, gauges)))];
  });
};

const whole: Part = (project, decisions) => {
  const bought = [...decisions.values()].flatMap((decision) => partsOf(decision).map(({ item }) => item));
  return [
    ...sharedEquipment(project, decisions).map((one) => told('shared', one)),
    ...withoutSet(project, decisions).map((one) => told('without a set', one)),
    told('not stated', unstated(project, bought)),
  ];
};

const otherBasis: Part = (project, decisions) => {
  const basis = { ibc: 2018, nfpa101: 2021, nec: 2017, nfpa72: 2016 } as const;
  const other = otherBasisOf(project, { basis, without: project.amendments.slice(0, 1).map(({ id }) => id) });
  return [
    told('compared', otherBasisInWords(project, other)),
    ...compareProject(project, other, decisions).flatMap(({ mark, differences }) =>
      differences.map((one) => told(mark, one)),
    ),
  ];
};

function each(
  project: Project,
  decisions: ReadonlyMap<string, Decision>,
  tell: (opening: Opening, decision: Decision) => readonly string[],
): readonly string[] {
  return openingsInOrder(project).flatMap((opening) => {
    const decision = decisions.get(opening.id);
    const all = decision ? tell(opening, decision) : [];
    return all.length === 0 ? [] : ['', `## ${opening.mark}`, ...all];
  });
}

/** What is printed of a project beside its decisions, part by part. */
export const paperParts = {
  'Hardware sets': sets,
  Openings: openings,
  'Lines of openings': lines,
  Wires: wires,
  'Of the whole': whole,
  'Under other editions': otherBasis,
} as const satisfies Readonly<Record<string, Part>>;
export const paperPartNames = Object.keys(paperParts) as readonly (keyof typeof paperParts)[];

/** Every third opening: enough of each kind, and few enough to be read. */
export function fewOf(project: Project): Project {
  const kept = openingsInOrder(project).filter((_, index) => index % 3 === 0);
  return { ...project, openings: Object.fromEntries(kept.map((opening) => [opening.id, opening])) };
}

export function goldenPaper(whole: Project): string {
  const project = fewOf(whole);
  const decisions = decideInBuilding(project);
  return paperPartNames
    .map((name) => `# ${name}\n${paperParts[name](project, decisions).join('\n')}\n`)
    .join('\n');
}

/** One part of the accepted paper. */
export function partOfPaper(paper: string, name: keyof typeof paperParts): readonly string[] {
  const from = paper.indexOf(`# ${name}\n`);
  const next = paper.indexOf('\n\n# ', from);
  return paper
    .slice(from, next < 0 ? -1 : next)
    .split('\n')
    .slice(1);
}

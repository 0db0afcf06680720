// How long the building as a whole takes: npx tsx scripts/bench/building.ts [openings] [spaces]
import { assessBuilding } from '../../src/domain/building/building.ts';
import { spaceEgress } from '../../src/domain/building/spaceEgress.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { known } from '../../src/domain/testing/facts.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { newProject, newSpace } from '../../src/domain/model/newProject.ts';
import { type Opening, type Project, securityLevels, type Space } from '../../src/domain/model/project.ts';
import { simulateOpening } from '../../src/domain/decide/whatHappens.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { pointAt, seeded, spaceSize } from '../../tests/properties/space.ts';

const { words } = argumentsOf({
  usage: 'npx tsx scripts/bench/building.ts [openings] [spaces]',
  words: ['openings', 'spaces'],
});
const openingCount = countOf(words[0], 'The number of openings', 5000);
const spaceCount = countOf(words[1], 'The number of spaces', 2000);
const random = seeded(20261127);
const pick = (count: number) => Math.floor(random() * count);

const spaces: Record<string, Space> = {};
for (let index = 0; index < spaceCount; index++) {
  const id = `s${index}`;
  spaces[id] = {
    ...newSpace(id, `Space ${index}`),
    kind: index < 4 ? 'outside' : index % 20 === 0 ? 'corridor' : 'room',
    securityLevel: index < 4 ? 'public' : (securityLevels[pick(securityLevels.length)] ?? null),
    occupantLoad: index % 20 === 0 ? null : pick(20),
  };
}
const facts = (values: FactValues) =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, known(value)])) as Opening['facts'];
const openings: Record<string, Opening> = {};
for (let index = 0; index < openingCount; index++) {
  const id = `o${index}`;
  const to = 4 + (index % (spaceCount - 4));
  // Each room hangs on a corridor or another room with a lower number, so most of the building holds together.
  const from = index < spaceCount - 4 ? pick(to) : pick(spaceCount);
  openings[id] = {
    id,
    mark: String(1000 + index),
    floorId: null,
    fromSpaceId: `s${from}`,
    toSpaceId: `s${to}`,
    facts: facts({
      ...pointAt(pick(spaceSize)).facts,
      leafWidthIn: 36,
      leafThicknessIn: 1.75,
      hinges: 'butt',
    }),
    notes: '',
    override: null,
  };
}
const project: Project = { ...newProject('bench', 'Bench'), spaces, openings };

/** Time of the processor, not of the clock on the wall: the machine may be busy with other things. */
function timed<T>(what: string, run: () => T): T {
  const started = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(started);
  console.log(`${what}: ${Math.round((user + system) / 1000)} ms`);
  return result;
}

console.log(`${openingCount} openings, ${spaceCount} spaces`);
const decisions = timed('decided', () => {
  const all = new Map<string, Decision>();
  for (const opening of Object.values(openings)) all.set(opening.id, decide(project, opening));
  return all;
});
for (const round of ['first', 'second']) {
  timed(`every opening in every condition, ${round} time`, () => {
    for (const opening of Object.values(openings)) {
      simulateOpening(project, opening, decisions.get(opening.id) as Decision);
    }
  });
}
for (const round of ['first', 'second']) {
  const answer = timed(`the building in every condition, openings included, ${round} time`, () =>
    assessBuilding(project, decisions),
  );
  if (round === 'first') {
    const kinds = new Map<string, number>();
    for (const { kind } of answer.findings) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
    console.log(
      `  ${new Set(answer.states.values()).size} different states, ${answer.findings.length} findings:`,
    );
    console.log(`  ${[...kinds].map(([kind, count]) => `${kind} ${count}`).join(', ')}`);
  }
  timed(`loads and exits of every space, ${round} time`, () => spaceEgress(answer));
}

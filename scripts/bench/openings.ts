import { readFileSync } from 'node:fs';
import { answersTo } from '../../src/domain/decide/answers.ts';
import { type Fact, type Facts } from '../../src/domain/model/fact.ts';
import { assumed, known, unknown } from '../../src/domain/testing/facts.ts';
import { factKeys, type FactValues, openingFactKeys } from '../../src/domain/model/fields.ts';
import type { Opening, Project } from '../../src/domain/model/project.ts';
import { openProjectText } from '../../src/domain/versions/file.ts';
import { seeded } from '../../tests/properties/space.ts';

export function demoProject(): Project {
  const opened = openProjectText(readFileSync('demo-data/demo-building.json', 'utf8'));
  if (!opened.ok) throw new Error('The demo building cannot be opened.');
  return opened.project;
}

const pick = <T>(from: readonly T[], random: () => number): T =>
  from[Math.floor(random() * from.length)] as T;

/** The openings of the demo building over and over, each with three of its facts answered differently. */
export function projectOf(count: number): Project {
  const project = demoProject();
  const random = seeded(count);
  const models = Object.values(project.openings);
  const openings: Record<string, Opening> = {};
  for (let index = 0; index < count; index++) {
    const model = models[index % models.length] as Opening;
    const facts: Record<string, unknown> = { ...model.facts };
    for (let change = 0; change < 3; change++) {
      const key = pick(openingFactKeys, random);
      if (key in facts) facts[key] = known(pick(answersTo(key), random));
    }
    const id = `o${index}`;
    openings[id] = { ...model, id, mark: `${model.mark}-${index}`, facts: facts };
  }
  return { ...project, openings };
}

/** Openings of which everything is known, for engines that know no third answer. */
export function surveyedFully(count: number): readonly Facts[] {
  const random = seeded(5000);
  return Array.from(
    { length: count },
    () => Object.fromEntries(factKeys.map((key) => [key, known(pick(answersTo(key), random))])) as Facts,
  );
}

/** The same opening with some of its facts asked in vain, and some only assumed. */
export function surveyedInPart(facts: Facts, seed: number): Facts {
  const random = seeded(seed);
  const share = random();
  return mapFacts(facts, (fact) => {
    if (random() > share || fact.is === 'unknown') return unknown;
    return random() < 0.1 ? assumed(fact.value, 'drawings') : fact;
  });
}

/** The same opening where nobody asked for what is unknown. */
export function unasked(facts: Facts): Facts {
  return mapFacts(facts, (fact) => (fact.is === 'unknown' ? undefined : fact));
}

function mapFacts(facts: Facts, change: (fact: Fact<unknown>) => Fact<unknown> | undefined): Facts {
  const entries = Object.entries(facts as Record<string, Fact<unknown>>);
  const changed = entries.map(([key, fact]) => [key, change(fact)] as const);
  return Object.fromEntries(changed.filter(([, fact]) => fact !== undefined)) as Facts;
}

export function valuesOf(facts: Facts): FactValues {
  const entries = Object.entries(facts as Record<string, Fact<unknown>>);
  return Object.fromEntries(
    entries.flatMap(([key, fact]) => (fact.is === 'unknown' ? [] : [[key, fact.value]])),
  ) as FactValues;
}

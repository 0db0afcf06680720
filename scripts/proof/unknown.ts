import { allRules } from '../../src/domain/rules/all.ts';
import { seeded, pointAt, spaceSize } from '../../tests/properties/space.ts';
import { caseSurveys, type Survey } from '../../tests/properties/surveys.ts';
import { demoProject } from '../demo/demoProject.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { type Loss, openingOf, silentLosses } from './silentLosses.ts';

/**
 * What an unknown fact drops without a word: `npx tsx scripts/proof/unknown.ts 2000` takes the demo building, every
 * case of every rule laid over an ordinary door, that many pairs of cases laid over each other, and as many openings
 * of the decision space; in each that is settled every known fact is made unknown once.
 */
const { words } = argumentsOf({ usage: 'npx tsx scripts/proof/unknown.ts [surveys]', words: ['surveys'] });
const wanted = countOf(words[0], 'The number of surveys', 1000);

const demo = demoProject();
const random = seeded(20261130);
const drawn = (): Survey => caseSurveys[Math.floor(random() * caseSurveys.length)] as Survey;
const surveys: readonly Survey[] = [
  ...caseSurveys,
  ...Array.from({ length: wanted }, () => {
    const [one, other] = [drawn(), drawn()];
    return { facts: { ...one.facts, ...other.facts }, basis: other.basis };
  }),
  ...Array.from({ length: wanted }, () => pointAt(Math.floor(random() * spaceSize))),
];

let trials = 0;
let settled = 0;
const lost: Loss[] = [];
function count(found: ReturnType<typeof silentLosses>): void {
  trials += found.trials;
  if (found.trials > 0) settled++;
  lost.push(...found.lost);
}
for (const opening of Object.values(demo.openings)) count(silentLosses(demo, opening));
surveys.forEach((survey, index) => count(silentLosses(...openingOf(survey, String(index)))));

console.log(`${allRules.length} rules; ${settled} settled openings, ${trials} facts made unknown.`);
const kinds = new Map<string, number>();
for (const { fact, item } of lost) {
  const kind = `${fact} -> ${item}`;
  kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
}
console.log(`${kinds.size} kinds of loss in silence, ${lost.length} losses.`);
for (const [kind, times] of [...kinds].toSorted((a, b) => b[1] - a[1])) console.log(`  ${times} ${kind}`);
process.exitCode = kinds.size === 0 ? 0 : 1;

import { readFileSync } from 'node:fs';
import type { FactKey } from '../../src/domain/model/fields.ts';
import { openProjectText } from '../../src/domain/versions/file.ts';
import { argumentsOf, refuse } from '../lib/arguments.mjs';
import { blank, fromSurvey, interview } from './interview.ts';
import { officeAnswers, officeDoor, officeProject } from './officeDoor.ts';

/**
 * How many answers an opening needs: every opening of the demo building is asked from the start, with its own survey
 * for answers. `npx tsx scripts/proof/questions.ts`; `questions.ts 101A` prints the questions of one opening as well.
 */
const { words } = argumentsOf({ usage: 'npx tsx scripts/proof/questions.ts [mark]', words: ['mark'] });
const wanted = words[0];
const opened = openProjectText(readFileSync('demo-data/demo-building.json', 'utf8'));
if (!opened.ok) throw new Error('The demo building cannot be opened.');
const { project } = opened;
if (wanted !== undefined && !Object.values(project.openings).some(({ mark }) => mark === wanted))
  refuse(`The demo building has no opening ${wanted}.`);

const office = interview(officeProject, officeDoor, officeAnswers);
console.log(
  `Ordinary office door: decided after ${office.untilDecided} answers, ${office.asked.length} until nothing matters: ${office.asked.join(', ')}.`,
);

interface Line {
  readonly mark: string;
  readonly decided: number | undefined;
  readonly all: number;
  readonly asked: readonly FactKey[];
  readonly state: string;
}
const lines: Line[] = Object.values(project.openings).map((opening) => {
  const one = interview(project, blank(opening), fromSurvey(project, opening));
  const { untilDecided: decided, asked, decision } = one;
  return { mark: opening.mark, decided, all: asked.length, asked, state: decision.state };
});

function spread(name: string, counts: readonly number[]): void {
  const sorted = counts.toSorted((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  console.log(
    `${name}: ${sorted.length} openings, least ${at(0)}, half of them ${at(0.5)}, nine of ten ${at(0.9)}, most ${at(1)}.`,
  );
  const tally = new Map<number, number>();
  for (const count of sorted) tally.set(count, (tally.get(count) ?? 0) + 1);
  for (const [count, openings] of tally)
    console.log(`  ${String(count).padStart(3)} ${'#'.repeat(openings)}`);
}

spread(
  'Answers until decided',
  lines.flatMap((one) => (one.decided === undefined ? [] : [one.decided])),
);
spread(
  'Answers until nothing more matters',
  lines.map((one) => one.all),
);
const open = lines.filter((one) => one.decided === undefined);
console.log(`Still open at the end: ${open.length} (${open.map((one) => one.mark).join(', ')}).`);
const asked = new Map<FactKey, number>();
for (const one of lines) for (const key of one.asked) asked.set(key, (asked.get(key) ?? 0) + 1);
const often = [...asked].toSorted((a, b) => b[1] - a[1]).slice(0, 25);
console.log(`Asked most often: ${often.map(([key, count]) => `${key} ${count}`).join(', ')}.`);
const shown = lines.find((one) => one.mark === wanted);
if (shown) console.log(`${shown.mark} (${shown.state}): ${shown.asked.join(', ')}.`);

import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { decideInBuilding } from '../src/domain/building/joined.ts';
import { deviceIds, devices } from '../src/domain/devices/devices.ts';
import { openingsInOrder, type Project, projectSchema } from '../src/domain/model/project.ts';
import { saveProjectText } from '../src/domain/versions/file.ts';
import { argumentsOf } from './lib/arguments.mjs';
import { demoProject } from './demo/demoProject.ts';
import { goldenText } from './demo/golden.ts';
import { goldenPaper } from './demo/goldenPaper.ts';
import { buildProject } from './demo/kit.ts';
import { smallOffice } from './demo/smallOffice.ts';

/**
 * Writes the demo projects. Edit the rows in scripts/demo, run `npx tsx scripts/demo.ts`, commit both. Given
 * --show it also prints what each opening was decided to be; given --accept it writes these decisions down as
 * the expected ones of tests/golden.
 */
const call = argumentsOf({ usage: 'npx tsx scripts/demo.ts [--show] [--accept]', flags: ['show', 'accept'] });
const folder = fileURLToPath(new URL('../demo-data/', import.meta.url));
mkdirSync(folder, { recursive: true });

function write(file: string, project: Project): void {
  const checked = projectSchema.safeParse(project);
  if (!checked.success) throw new Error(`${file}: ${JSON.stringify(checked.error.issues.slice(0, 5))}`);
  writeFileSync(`${folder}${file}`, saveProjectText(project));
  report(file, project);
}

function report(file: string, project: Project): void {
  const decisions = decideInBuilding(project);
  const chosen = new Set<string>();
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    if (decision.chosen && !decision.overridden) chosen.add(decision.chosen.candidate.deviceId);
    if (call.has('show')) {
      const open = decision.open[0];
      const why = open
        ? `${open.candidate.id} waits on ${open.because.map((step) => step.rule.id).join(' ')}`
        : '';
      console.log([opening.mark, decision.state, decision.chosen?.candidate.id ?? '-', why].join('  '));
    }
  }
  const never = deviceIds.filter((id) => !chosen.has(id)).map((id) => devices[id].name);
  console.log(
    `${file}: ${Object.keys(project.openings).length} openings. Never chosen: ${never.join('; ') || 'none'}.`,
  );
}

const demo = demoProject();
write('demo-building.json', demo);
write('small-office.json', buildProject(smallOffice));
if (call.has('accept')) {
  for (const [name, text] of [
    ['demo-decisions.jsonl', goldenText(demo)],
    ['demo-paper.txt', goldenPaper(demo)],
  ] as const) {
    writeFileSync(fileURLToPath(new URL(`../tests/golden/${name}`, import.meta.url)), text);
    console.log(`tests/golden/${name}: accepted.`);
  }
}

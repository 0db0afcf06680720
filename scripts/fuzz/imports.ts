// Mutates door schedules, workbooks, building models and project containers and reads each one: nothing may throw, hang,
// come in by half, or vanish without a word. npx tsx scripts/fuzz/imports.ts KIND [COUNT] [FIRST SEED]
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { applyEdits, commandProblemInWords } from '../../src/domain/commands/command.ts';
import { importEdits } from '../../src/domain/import/again.ts';
import { importTable } from '../../src/domain/import/csv.ts';
import { bestTable } from '../../src/domain/import/sheets.ts';
import { newProject } from '../../src/domain/model/newProject.ts';
import { openProblemInWords, openProjectText, saveProjectText } from '../../src/domain/versions/file.ts';
import { workbookOf } from '../../src/exporting/xlsx/workbook.ts';
import { modelProcess } from '../../src/cli/modelReader.ts';
import { packProject, readProjectFile } from '../../src/intake/container.ts';
import { ifcEngine } from '../../src/intake/ifc/engine.ts';
import type { ModelReader } from '../../src/intake/ifc/isModel.ts';
import { readIfc } from '../../src/intake/ifc/readIfc.ts';
import { readSchedule } from '../../src/intake/readFile.ts';
import { stepModel } from '../../src/intake/ifc/testing/stepModel.ts';
import { buildProject } from '../demo/kit.ts';
import { smallOffice } from '../demo/smallOffice.ts';
import { argumentsOf, countOf, refuse } from '../lib/arguments.mjs';
import { chance, type Chance } from './chance.ts';
import { slippedBytes, slippedText } from './mutate.ts';
import { faultIn as faultInProject } from './projectFiles.ts';

export const kinds = ['csv', 'xlsx', 'ifc', 'container'] as const;
export type Kind = (typeof kinds)[number];

const rows: readonly (readonly string[])[] = [
  ['Door No.', 'Level', 'Room', 'Size', 'Door Material', 'Frame', 'Fire Rating', 'Remarks'],
  ['101', 'First Floor', 'Office', `3'-0" x 7'-0"`, 'SCWD', 'HM', '20 MIN', 'CARD READER'],
  ['102', 'First Floor', 'Corridor', '3070', 'HM', 'HM', 'B', 'a, "b"'],
  ['', '', '', '', '', '', '', ''],
  ['Second Floor', '', '', '', '', '', '', ''],
  ['201', 'Second Floor', 'Stair', 'PR 6070', 'ALUM', 'AL', '1-1/2 HR', '–'],
  ['202', 'Second Floor', 'Storage', '914 x 2134 mm', 'WD', 'WD', '-', 'NOT USED'],
  ['Grand total: 4', '', '', '', '', '', '', ''],
];
const csv = rows.map((row) => row.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(',')).join('\n');
const engine = ifcEngine();
const readHere: ModelReader = (bytes) => readIfc(bytes, engine);

/** The whole file of a kind, and how it is mutated. */
export interface Source {
  readonly whole: Uint8Array;
  readonly mutated: (random: Chance) => Uint8Array;
}

export async function sourceOf(kind: Kind): Promise<Source> {
  switch (kind) {
    case 'csv':
      return textSource(csv);
    case 'ifc': {
      const texts = [
        stepModel(),
        stepModel({ schema: 'IFC2X3', unit: 'foot' }),
        stepModel({ schema: 'IFC4X3_ADD2' }),
      ];
      return {
        ...textSource(texts[0] ?? ''),
        mutated: (random) => textSource(random.of(texts)).mutated(random),
      };
    }
    case 'xlsx': {
      const [head = [], ...body] = rows;
      return zipSource(await workbookOf([{ name: 'Doors', head, rows: body }]));
    }
    case 'container':
      return zipSource(packProject(saveProjectText(buildProject(smallOffice))));
  }
}

function textSource(text: string): Source {
  const whole = strToU8(text);
  return {
    whole,
    mutated: (random) =>
      random.below(4) === 0 ? slippedBytes(whole, random) : strToU8(slippedText(text, random)),
  };
}

/** Half of the slips stand in the archive, half in the texts that are packed into it. */
function zipSource(whole: Uint8Array): Source {
  const entries = unzipSync(whole);
  const names = Object.keys(entries);
  return {
    whole,
    mutated: (random) => {
      if (random.below(2) === 0) return slippedBytes(whole, random);
      const name = random.of(names);
      const text = slippedText(strFromU8(entries[name] ?? new Uint8Array()), random);
      return zipSync({ ...entries, [name]: strToU8(text) }, { level: 1 });
    },
  };
}

export interface Outcome {
  readonly refused: boolean;
  readonly fault?: string;
}

const isSentence = (says: string) => /^[^a-z\s].{8,}[.…]$/su.test(says.trim());
const longestMs = 2000;
const cpuMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** What must hold for any bytes. Time is that of the processor: a busy machine is no hang. */
export async function outcomeOf(
  kind: Kind,
  bytes: Uint8Array,
  read: ModelReader = readHere,
): Promise<Outcome> {
  const started = cpuMs();
  let outcome: Outcome;
  try {
    outcome = kind === 'container' ? projectOutcome(bytes) : await scheduleOutcome(bytes, read);
  } catch (error) {
    outcome = { refused: false, fault: `threw ${error instanceof Error ? error.stack : String(error)}` };
  }
  const took = cpuMs() - started;
  return took > longestMs && outcome.fault === undefined
    ? { ...outcome, fault: `took ${Math.round(took)} ms` }
    : outcome;
}

function refusedWith(says: string): Outcome {
  return isSentence(says) ? { refused: true } : { refused: true, fault: `no sentence: ${says}` };
}

function projectOutcome(bytes: Uint8Array): Outcome {
  const read = readProjectFile(bytes);
  if (!read.ok) return refusedWith(read.says);
  const opened = openProjectText(read.text);
  if (!opened.ok) return refusedWith(openProblemInWords(opened.problem));
  const fault = faultInProject(read.text);
  return fault === undefined ? { refused: false } : { refused: false, fault };
}

async function scheduleOutcome(bytes: Uint8Array, model: ModelReader): Promise<Outcome> {
  const read = await readSchedule(bytes, model);
  if (!read.ok) return refusedWith(read.says);
  const found = bestTable(read.grids);
  if (!found.ok) return refusedWith(found.says);
  const { table } = found;
  let count = 0;
  const imported = importTable(table, { newId: () => `n${(count += 1)}` });
  const { openings, refused, skipped, problems } = imported;
  const told = openings.length + refused.length + skipped.length;
  const markless = problems.some(({ row, refuses }) => row === null && refuses);
  if (!markless && told !== table.rows.length)
    return { refused: false, fault: `${table.rows.length} rows in, ${told} told` };
  const named = new Set(problems.filter(({ refuses }) => refuses).map(({ row }) => row));
  const unnamed = refused.find(({ row }) => !named.has(row));
  if (unnamed) return { refused: false, fault: `row ${unnamed.row} is refused without a word` };
  const unsaid = problems.find(({ says }) => !isSentence(says));
  if (unsaid) return { refused: false, fault: `no sentence: ${unsaid.says}` };
  const text = new TextDecoder('latin1').decode(bytes);
  const doors = [...text.matchAll(/#\d+\s*=\s*IFCDOOR(?:STANDARDCASE)?\s*\(/gi)].length;
  if (table.places && doors > table.rows.length && !read.note.includes('could not be read')) {
    return { refused: false, fault: `${doors} door records in, ${table.rows.length} told` };
  }
  const project = newProject('p', 'P');
  const applied = applyEdits(project, importEdits(project, imported));
  if (!applied.ok)
    return { refused: false, fault: `preview let through: ${commandProblemInWords(applied.problem)}` };
  const came = Object.keys(applied.project.openings).length;
  return came === openings.length
    ? { refused: false }
    : { refused: false, fault: `${came} of ${openings.length} came in` };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { words } = argumentsOf({
    usage: `npx tsx scripts/fuzz/imports.ts ${kinds.join('|')} [count] [first seed]`,
    words: ['kind', 'count', 'first seed'],
  });
  const kind = kinds.find((one) => one === words[0]) ?? refuse(`The kind is one of ${kinds.join(', ')}.`);
  const count = countOf(words[1], 'The count', 10_000);
  const first = countOf(words[2], 'The first seed', 1);
  const source = await sourceOf(kind);
  // Loads what is loaded once, so that it is not counted as the first file's.
  // A process of its own for models, given up after half a second of silence: the command line waits longer.
  const models = modelProcess(0.1);
  await outcomeOf(kind, source.whole, models.read);
  let [faults, refused, slowest] = [0, 0, 0];
  for (let seed = first; seed < first + count; seed += 1) {
    const bytes = source.mutated(chance(seed));
    const started = cpuMs();
    // One after the other, so that the time of each is its own.
    // oxlint-disable-next-line no-await-in-loop
    const outcome = await outcomeOf(kind, bytes, models.read);
    slowest = Math.max(slowest, cpuMs() - started);
    if (outcome.refused) refused += 1;
    if (outcome.fault === undefined) continue;
    faults += 1;
    process.stdout.write(`seed ${seed}: ${outcome.fault}\n`);
  }
  process.stdout.write(
    `${kind}: ${count} files, ${refused} refused with a sentence, ${faults} faults, slowest ${Math.round(slowest)} ms\n`,
  );
  models.end();
  process.exitCode = faults > 0 ? 1 : 0;
}

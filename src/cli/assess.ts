import { readFileSync, writeSync } from 'node:fs';
import process from 'node:process';
import { parseArgs } from 'node:util';
import { decideInBuilding, judgeBuilding } from '../domain/building/joined.ts';
import { doubtsOf } from '../domain/project/doubts.ts';
import { setNumbersOf } from '../domain/sets/sets.ts';
import { openingsInOrder, type Project } from '../domain/model/project.ts';
import { onOtherBasis, type OtherBasis } from '../domain/schedules/otherBasis.ts';
import { buildingLine, buildingRecord } from '../exporting/jsonl/buildingRecord.ts';
import { powerRecords } from '../exporting/jsonl/powerRecord.ts';
import { comparisonRecord } from '../exporting/jsonl/comparisonRecord.ts';
import { decisionRecord, recordLine } from '../exporting/jsonl/record.ts';
import { readBasis } from './basis.ts';
import { isModelReader } from './modelReader.ts';
import { loadProject } from './source.ts';

/**
 * Decides every opening of a project file or a CSV schedule: one JSON object per opening on standard output, with
 * --compare-basis what another basis would change at each, with --building a last one about the building; problems as sentences on standard error. Ends with 0, with 1 when a
 * record was left out, with 2 when the file or the call could not be read.
 */
const usage =
  'Usage: npm run --silent assess -- FILE [--basis ibc2021,nfpa101-2021] [--compare-basis ibc2024] [--compare-no-amendments] [--building] [--pretty]';
const unreadable = 2;

function say(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}

function readCall() {
  try {
    return parseArgs({
      allowPositionals: true,
      options: {
        basis: { type: 'string' },
        'compare-basis': { type: 'string' },
        'compare-no-amendments': { type: 'boolean' },
        building: { type: 'boolean' },
        pretty: { type: 'boolean' },
        help: { type: 'boolean' },
      },
    });
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    return undefined;
  }
}

function readBytes(file: string): Uint8Array | undefined {
  try {
    return readFileSync(file);
  } catch (error) {
    say(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}.`);
    return undefined;
  }
}

type Compared =
  | { readonly ok: true; readonly other: OtherBasis | undefined }
  | { readonly ok: false; readonly says: string };

/** What the project is to be held against; nothing where nobody asked. */
function otherBasisIn(
  values: { readonly 'compare-basis'?: string; readonly 'compare-no-amendments'?: boolean },
  { basis, amendments }: Project,
): Compared {
  const wanted = values['compare-basis'];
  const without = values['compare-no-amendments'] === true;
  if (wanted === undefined && !without) return { ok: true, other: undefined };
  const read = wanted === undefined ? { ok: true as const, basis } : readBasis(wanted, basis);
  return read.ok ? { ok: true, other: { basis: read.basis, amendments: without ? [] : amendments } } : read;
}

async function main(): Promise<number> {
  const call = readCall();
  const file = call?.positionals[0];
  if (call?.values.help) {
    process.stdout.write(`${usage}\n`);
    return 0;
  }
  if (!call || file === undefined || call.positionals.length > 1) {
    say(usage);
    return unreadable;
  }
  const bytes = readBytes(file);
  if (!bytes) return unreadable;
  const source = await loadProject(bytes);
  if (!source.ok) {
    say(`${file}: ${source.says}`);
    return unreadable;
  }
  const basis = readBasis(call.values.basis ?? '', source.project.basis);
  if (call.values.basis !== undefined && !basis.ok) {
    say(basis.says);
    return unreadable;
  }
  const project = basis.ok ? { ...source.project, basis: basis.basis } : source.project;
  const compared = otherBasisIn(call.values, project);
  if (!compared.ok) {
    say(compared.says);
    return unreadable;
  }
  for (const problem of source.problems) say(problem);
  const { findings, decisions } = judgeBuilding(project);
  const numbers = setNumbersOf(project, decisions);
  const doubts = doubtsOf(project);
  const others = compared.other && decideInBuilding(onOtherBasis(project, compared.other));
  let lines = '';
  for (const opening of openingsInOrder(project)) {
    const decision = decisions.get(opening.id);
    if (!decision) continue;
    const record = decisionRecord(project, opening, decision, numbers, doubts);
    const then = others?.get(opening.id);
    const comparison = then && { comparison: comparisonRecord(opening, decision, then) };
    lines += `${recordLine({ ...record, ...comparison }, call.values.pretty)}\n`;
  }
  if (call.values.building) {
    lines += `${buildingLine(buildingRecord(project, findings, powerRecords(project, decisions)), call.values.pretty)}\n`;
  }
  writeAll(lines);
  return source.refused > 0 ? 1 : 0;
}

/** In whole before the process ends: a pipe takes only so much at once. */
function writeAll(text: string): void {
  let rest = Buffer.from(text, 'utf8');
  while (rest.length > 0) {
    try {
      rest = rest.subarray(writeSync(1, rest));
    } catch (error) {
      const code = (error as NodeJS.ErrnoException).code;
      // The reader went away, as `head` does: nothing more is wanted.
      if (code === 'EPIPE') return;
      if (code !== 'EAGAIN') throw error;
    }
  }
}

// The reader of building models is started with the same file.
if (!isModelReader) process.exitCode = await main();

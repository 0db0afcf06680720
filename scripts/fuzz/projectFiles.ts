// Mutates a project file in many ways and opens each one: nothing may throw, hang, or vanish without a word.
//   npx tsx scripts/fuzz/projectFiles.ts [COUNT] [FIRST SEED]
import { fileURLToPath } from 'node:url';
import process from 'node:process';
import { decideAll } from '../../src/domain/decide/decide.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { doubtsOf } from '../../src/domain/project/doubts.ts';
import { openProjectText, saveProjectText } from '../../src/domain/versions/file.ts';
import { smallOffice } from '../demo/smallOffice.ts';
import { buildProject } from '../demo/kit.ts';
import { argumentsOf, countOf } from '../lib/arguments.mjs';
import { chance, type Chance } from './chance.ts';

type Json = null | boolean | number | string | Json[] | { [key: string]: Json };

const junk: readonly Json[] = [
  null,
  true,
  -1,
  1e308,
  '',
  'x'.repeat(3000),
  '__proto__',
  '\u0000',
  [],
  {},
  [[[]]],
  { is: 'known', value: 'tractor' },
  { id: 'a' },
];

/** Every place of the file, as the way to it. */
function placesIn(value: Json, way: readonly string[] = []): readonly (readonly string[])[] {
  if (value === null || typeof value !== 'object') return [way];
  return [way, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...way, key]))];
}

/** One to three places replaced, removed, doubled or moved; sometimes the text itself is broken. */
export function mutated(text: string, random: Chance): string {
  const file = JSON.parse(text) as Json;
  const places = placesIn(file).filter((way) => way.length > 1);
  for (let count = 1 + random.below(3); count > 0; count -= 1) {
    const way = random.of(places);
    let inside = file;
    for (const key of way.slice(0, -1)) inside = (inside as Record<string, Json>)?.[key] ?? {};
    if (inside === null || typeof inside !== 'object') continue;
    const key = way.at(-1) ?? '';
    const entries = inside as Record<string, Json>;
    const kind = random.below(4);
    if (kind === 0) delete entries[key];
    else if (kind === 1) entries[`${key}${random.below(3)}`] = structuredClone(entries[key] ?? null);
    else entries[key] = structuredClone(random.of(junk));
  }
  const out = JSON.stringify(file);
  const at = random.below(out.length);
  switch (random.below(12)) {
    case 0:
      return out.slice(0, at);
    case 1:
      return `${out.slice(0, at)}${random.of(['"', '{', ',', '\u0000', '\uD800'])}${out.slice(at)}`;
    case 2:
      return out.replace('"notes":"', `"notes":"twice","notes":"`);
    case 3: {
      const levels = 100 + random.below(20_000);
      return out.replace('"notes":""', `"notes":"","more":${'['.repeat(levels)}${']'.repeat(levels)}`);
    }
    default:
      return out;
  }
}

/** What must hold for any text; undefined when all of it does. */
export function faultIn(text: string): string | undefined {
  // Work, not waiting: on a busy machine the clock goes on without us.
  const started = process.cpuUsage();
  const opened = openProjectText(text);
  if (!opened.ok) return undefined;
  const { project, setAside } = opened;
  const lost = lostIn(text, project);
  if (lost.length > setAside.length) return `lost without a word: ${lost.join(', ')}`;
  if (setAside.length > 0 && doubtsOf(project).length < setAside.length) return 'set aside and not said';
  const saved = saveProjectText(project);
  const again = openProjectText(saved);
  if (!again.ok) return 'what was saved cannot be opened';
  if (again.setAside.length > 0) return `set aside again: ${again.setAside[0]?.where}`;
  if (saveProjectText(again.project) !== saved) return 'saved twice, the bytes differ';
  if (decideAll(project).size !== Object.keys(project.openings).length)
    return 'an opening without a decision';
  const { user, system } = process.cpuUsage(started);
  const took = (user + system) / 1000;
  return took > 2000 ? `took ${Math.round(took)} ms` : undefined;
}

/** Records of the file that are not in the project any more, or not as they were. */
function lostIn(text: string, project: Project): readonly string[] {
  const { project: raw } = JSON.parse(text) as { project: Record<string, Json> };
  return (['floors', 'spaces', 'openings'] as const).flatMap((table) => {
    const before = raw[table];
    if (before === null || typeof before !== 'object' || Array.isArray(before)) return [];
    return Object.keys(before).filter((id) => !Object.hasOwn(project[table], id));
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { words } = argumentsOf({
    usage: 'npx tsx scripts/fuzz/projectFiles.ts [count] [first seed]',
    words: ['count', 'first seed'],
  });
  const count = countOf(words[0], 'The count', 10_000);
  const first = countOf(words[1], 'The first seed', 1);
  const whole = saveProjectText(buildProject(smallOffice));
  let faults = 0;
  let refused = 0;
  for (let seed = first; seed < first + count; seed += 1) {
    const text = mutated(whole, chance(seed));
    if (!openProjectText(text).ok) refused += 1;
    const fault = faultIn(text);
    if (fault === undefined) continue;
    faults += 1;
    process.stdout.write(`seed ${seed}: ${fault}\n`);
  }
  process.stdout.write(`${count} files, ${refused} refused with a sentence, ${faults} faults\n`);
  process.exitCode = faults > 0 ? 1 : 0;
}

/** A file broken in one small way, as the runner reports it. Lines and columns count from 1. */
export interface Broken {
  readonly status:
    | 'Killed'
    | 'Timeout'
    | 'Survived'
    | 'NoCoverage'
    | 'Ignored'
    | 'CompileError'
    | 'RuntimeError';
  readonly location: { readonly start: Place; readonly end: Place };
  readonly replacement?: string;
}
interface Place {
  readonly line: number;
  readonly column: number;
}

/** What was last found of one file. */
export interface Measure {
  readonly tests: readonly string[];
  readonly tried: number;
  readonly killed: number;
  /** Code that runs only while the file loads: tables, which are not broken one by one. */
  readonly atLoad: number;
  /** What no test noticed, and why that may be; empty while nobody has looked. Filled by hand. */
  readonly survivors: Readonly<Record<string, string>>;
}
export type Measures = Readonly<Record<string, Measure>>;

/** What became of a mutant; `slip` names it without lines, which move. */
export function noticed(
  { status, location, replacement = '' }: Broken,
  source: string,
): { readonly is: 'killed' | 'missed' | 'notTried'; readonly slip: string } {
  const is =
    status === 'Killed' || status === 'Timeout'
      ? 'killed'
      : status === 'Survived' || status === 'NoCoverage'
        ? 'missed'
        : 'notTried';
  return { is, slip: `${short(cut(source, location))} → ${short(replacement)}` };
}

function cut(source: string, { start, end }: Broken['location']): string {
  const lines = source.split('\n').slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, index) =>
      line.slice(index === 0 ? start.column - 1 : 0, index === last ? end.column - 1 : undefined),
    )
    .join(' ');
}
function short(code: string): string {
  const line = code.replaceAll(/\s+/g, ' ').replaceAll('`', '´').trim();
  return line.length > 90 ? `${line.slice(0, 60)} … ${line.slice(-25)}` : line === '' ? 'nothing' : line;
}

export function measureOf(given: {
  readonly source: string;
  readonly mutants: readonly Broken[];
  readonly tests: readonly string[];
  readonly before: Measure | undefined;
}): Measure {
  const told = given.mutants.map((one) => noticed(one, given.source));
  const missed = told.filter(({ is }) => is === 'missed');
  return {
    tests: given.tests,
    tried: told.filter(({ is }) => is !== 'notTried').length,
    killed: told.filter(({ is }) => is === 'killed').length,
    atLoad: given.mutants.filter(({ status }) => status === 'Ignored').length,
    survivors: Object.fromEntries(missed.map(({ slip }) => [slip, given.before?.survivors[slip] ?? ''])),
  };
}

export function shareOf(measures: readonly Measure[]): {
  readonly killed: number;
  readonly tried: number;
  readonly share: number;
} {
  const sum = (of: (one: Measure) => number) => measures.reduce((total, one) => total + of(one), 0);
  const [killed, tried] = [sum((one) => one.killed), sum((one) => one.tried)];
  return { killed, tried, share: tried === 0 ? 1 : killed / tried };
}

function grouped<T>(all: readonly T[], by: (one: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(by(one), [...(groups.get(by(one)) ?? []), one]);
  return groups;
}

const roomOf = (file: string) =>
  file
    .split('/')
    .slice(0, file.startsWith('src/domain/') ? 3 : 2)
    .join('/');
const inWords = (measures: readonly Measure[]) => {
  const { killed, tried, share } = shareOf(measures);
  const atLoad = measures.reduce((total, one) => total + one.atLoad, 0);
  return `${tried} | ${killed} | ${(100 * share).toFixed(1)} % | ${atLoad} |`;
};

/** docs/mutants.md. */
export function mutantsPage(measures: Measures): string {
  const rooms = grouped(Object.entries(measures), ([file]) => roomOf(file));
  const rows = [...rooms].flatMap(([room, files]) => [
    `| **\`${room}\`** | ${inWords(files.map(([, one]) => one))}`,
    ...files.map(([file, one]) => `| ${file.slice(room.length + 1)} | ${inWords([one])}`),
  ]);
  const survivors = Object.entries(measures).flatMap(([file, { survivors: missed }]) => {
    const whys = grouped(Object.entries(missed), ([, why]) => why);
    if (whys.size === 0) return [];
    return [
      `### \`${file}\``,
      '',
      ...[...whys].flatMap(([why, slips]) =>
        why === ''
          ? [`- Not looked at yet: ${slips.length}, by name in scripts/mutation/measured.json.`]
          : [`- ${why}`, ...slips.map(([slip]) => `  - \`${slip}\``)],
      ),
      '',
    ];
  });
  return `${[
    '# Code broken in small ways, room by room',
    '',
    'Written by `npm run mutate`. Each file was broken in every small way the runner knows (a condition turned, a bound moved,',
    'a sentence emptied, a step left out), one way at a time, and its tests were asked. Code that runs once, while',
    'its file loads, is not broken: tables, which have tests of their own. Files of a room that are not listed were not measured;',
    'a figure holds for the tests of its day, and a later test can only raise it.',
    '',
    '| Room, file | Tried | Killed | Share | At load, not tried |',
    '| --- | ---: | ---: | ---: | ---: |',
    ...rows,
    '',
    '## What no test noticed, and why',
    '',
    ...survivors,
  ]
    .join('\n')
    .trimEnd()}\n`;
}

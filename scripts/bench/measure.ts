/** Median of rounds, in milliseconds of CPU time and of wall time. On a shared machine only CPU time says much. */
export interface Measured {
  readonly cpuMs: number;
  readonly wallMs: number;
}

export function measure(rounds: number, work: () => void): Measured {
  work();
  return medianOf(Array.from({ length: rounds }, () => stopwatch(work)));
}

export async function measureAsync(rounds: number, work: () => Promise<void>): Promise<Measured> {
  await work();
  const found: Measured[] = [];
  for (let round = 0; round < rounds; round++) {
    const [cpu, wall] = [process.cpuUsage(), performance.now()];
    await work();
    found.push(since(cpu, wall));
  }
  return medianOf(found);
}

function stopwatch(work: () => void): Measured {
  const [cpu, wall] = [process.cpuUsage(), performance.now()];
  work();
  return since(cpu, wall);
}

function since(cpu: NodeJS.CpuUsage, wall: number): Measured {
  const { user, system } = process.cpuUsage(cpu);
  return { cpuMs: (user + system) / 1000, wallMs: performance.now() - wall };
}

function medianOf(found: readonly Measured[]): Measured {
  const middle = (pick: (one: Measured) => number) =>
    found.map(pick).toSorted((a, b) => a - b)[Math.floor(found.length / 2)] ?? 0;
  return { cpuMs: middle((one) => one.cpuMs), wallMs: middle((one) => one.wallMs) };
}

/** One line of the table: what, its figure, and the goal it is held against. */
export interface Line {
  readonly what: string;
  readonly figure: string;
  readonly goal?: string;
  readonly met?: boolean;
}

/** Prints them; a goal that is missed ends the run with 1. */
export function report(title: string, lines: readonly Line[]): void {
  console.log(table(title, lines));
  if (lines.some(({ met }) => met === false)) process.exitCode = 1;
}

function table(title: string, lines: readonly Line[]): string {
  const width = Math.max(...lines.map((line) => line.what.length));
  const rows = lines.map(({ what, figure, goal, met }) => {
    const against = goal === undefined ? '' : `   goal ${goal}: ${met ? 'met' : 'MISSED'}`;
    return `  ${what.padEnd(width)}  ${figure}${against}`;
  });
  return [title, ...rows].join('\n');
}

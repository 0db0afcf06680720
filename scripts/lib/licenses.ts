import { z } from 'zod';

/** What npm writes into its lock about each package. */
const lockSchema = z.object({
  packages: z.record(
    z.string(),
    z.object({ version: z.string().optional(), license: z.string().optional(), dev: z.boolean().optional() }),
  ),
});

export interface PackageLine {
  readonly name: string;
  readonly version: string;
  /** '' where the lock names none. */
  readonly license: string;
  /** Reaches the page; the others only build and test it. */
  readonly isShipped: boolean;
}

/** Licenses that let the app be shipped without asking anybody, with the notice each asks for. */
const allowed: ReadonlySet<string> = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  '0BSD',
  'OFL-1.1',
  'EPL-2.0',
]);

export function packagesOf(lock: unknown): readonly PackageLine[] {
  return Object.entries(lockSchema.parse(lock).packages)
    .filter(([path]) => path !== '')
    .map(([path, { version = '', license = '', dev = false }]) => ({
      name: path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length),
      version,
      license,
      isShipped: !dev,
    }))
    .toSorted((a, b) => a.name.localeCompare(b.name));
}

/** Shipped packages whose license somebody has to read first. “(MIT OR …)” is settled by its first choice. */
export const toBeRead = (packages: readonly PackageLine[]): readonly PackageLine[] =>
  packages.filter(
    ({ isShipped, license }) =>
      isShipped &&
      !license
        .replaceAll(/[()]/g, '')
        .split(' OR ')
        .some((one) => allowed.has(one.trim())),
  );

export function countsByLicense(packages: readonly PackageLine[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { license } of packages) counts.set(license, (counts.get(license) ?? 0) + 1);
  return [...counts].toSorted(([, a], [, b]) => b - a);
}

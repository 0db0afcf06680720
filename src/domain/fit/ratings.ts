import { type Qty, qty } from '../units/quantity.ts';
import { refuse, type Told } from '../units/told.ts';

/** Static and dynamic levels of electric locking mechanisms. Source: UL 1034, 6th edition, scope; read. */
const ul1034Levels = [
  { staticLbf: 1500, dynamicFtLbf: 70 },
  { staticLbf: 1000, dynamicFtLbf: 50 },
  { staticLbf: 500, dynamicFtLbf: 33 },
] as const;

/** The highest static level and, apart from it, the highest dynamic level that tested figures reach; 0 is none. */
export function ul1034Reached(
  tested: Qty<'lbf'>,
  blow: Qty<'ft·lbf'>,
): { readonly staticLbf: number; readonly dynamicFtLbf: number } {
  return {
    staticLbf: ul1034Levels.find((level) => tested >= level.staticLbf)?.staticLbf ?? 0,
    dynamicFtLbf: ul1034Levels.find((level) => blow >= level.dynamicFtLbf)?.dynamicFtLbf ?? 0,
  };
}

/** A graded set is as good as its weakest part; grade 1 is the best of 3. Source: A156.2-2017, A156.3 (2020); read. */
export function setGrade(parts: readonly [1 | 2 | 3, ...(1 | 2 | 3)[]]): 1 | 2 | 3 {
  return Math.max(...parts) as 1 | 2 | 3;
}

/**
 * Reads the type number of an electromagnetic lock, E18501-1000: locations, grade, holding class in lbf.
 * Source: ANSI/BHMA A156.23, as reported by the trade press; read.
 */
export function magnetTypeNumber(
  text: string,
): Told<{ locations: 'all' | 'indoor'; grade: 1 | 2 | 3; holding: Qty<'lbf'> }> {
  const parts = /^E([01])8\d{2}([123])-(\d{3,4})$/.exec(text.trim().toUpperCase());
  if (!parts) return refuse(`“${text.trim()}” is not a type number of the kind E18501-1000.`);
  return {
    ok: true,
    locations: parts[1] === '0' ? 'all' : 'indoor',
    grade: Number(parts[2]) as 1 | 2 | 3,
    holding: qty(Number(parts[3]), 'lbf'),
  };
}

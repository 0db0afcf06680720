/**
 * A mark to propose for the next opening: the last one counted up by one, past those already used. Works on the
 * last run of digits (S1-2 → S1-3, 101A → 102A).
 */
export function nextMark(used: readonly string[], last: string | undefined): string {
  const taken = new Set(used);
  let mark = last ?? used.at(-1) ?? '100';
  do {
    const counted = mark.replace(/(\d+)(\D*)$/, (_whole, digits: string, tail: string) => {
      return String(Number(digits) + 1).padStart(digits.length, '0') + tail;
    });
    mark = counted === mark ? `${mark}-2` : counted;
  } while (taken.has(mark));
  return mark;
}

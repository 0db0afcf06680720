export type ReadRating =
  | { readonly ok: true; readonly minutes: number | null; readonly smoke: boolean }
  | { readonly ok: false; readonly says: string };

const fractions: Readonly<Record<string, number>> = { '1/3': 20, '1/2': 30, '3/4': 45 };
const nothing: ReadRating = { ok: true, minutes: null, smoke: false };

/**
 * A fire rating as schedules write it: 90, 90 MIN, 60M, 1-1/2 HR, 20S, FD30S. Letters name a kind of opening and
 * no time, so they are refused. A dash or N/A fills an empty cell in many programs, so it is taken as saying
 * nothing; only words such as NR say that no rating is asked.
 */
export function readFireRating(text: string): ReadRating {
  const word = text.trim().toUpperCase().replace(/\s+/g, ' ');
  if (word === '' || /^(-+|–|—|N\/A|NA|TBD|\?)$/.test(word)) return nothing;
  if (/^(NR|N\.R\.|NOT RATED|NON-?RATED|UNRATED|NONE|0( MIN)?)$/.test(word)) {
    return { ok: true, minutes: 0, smoke: false };
  }
  if (/^("?[A-E]"?)( LABEL)?$/.test(word)) {
    return {
      ok: false,
      says: `“${text.trim()}” is a class of opening, not a time: a B label may mean 60 or 90 minutes. Write minutes.`,
    };
  }
  const british = /^FD ?(\d{2,3})(S?)$/.exec(word);
  if (british) return { ok: true, minutes: Number(british[1]), smoke: british[2] === 'S' };
  const hours = /^(?:(\d+)[ -]?)?(1\/3|1\/2|3\/4)? ?-?(?:H|HR|HRS|HOUR|HOURS)\.?$/.exec(word);
  if (hours && (hours[1] !== undefined || hours[2] !== undefined)) {
    return { ok: true, minutes: Number(hours[1] ?? 0) * 60 + (fractions[hours[2] ?? ''] ?? 0), smoke: false };
  }
  const decimal = /^(\d+\.\d+) ?(?:H|HR|HRS|HOUR|HOURS)\.?$/.exec(word);
  if (decimal) return { ok: true, minutes: Number(decimal[1]) * 60, smoke: false };
  const smoke = /^(?:(\d{2,3}) ?-?S|S ?-?(\d{2,3}))$/.exec(word);
  if (smoke) return { ok: true, minutes: Number(smoke[1] ?? smoke[2]), smoke: true };
  // Behind a unit the S stands by itself: the one in MINS and MINUTES says nothing of smoke.
  const minutes = /^(\d{2,3}) ?-?(?:M|MINS?|MINUTES?)?\.?(?: LABEL)?( S)?$/.exec(word);
  if (minutes) return { ok: true, minutes: Number(minutes[1]), smoke: minutes[2] !== undefined };
  return {
    ok: false,
    says: `“${text.trim()}” is not a fire rating that can be read; write minutes, such as 45 min.`,
  };
}

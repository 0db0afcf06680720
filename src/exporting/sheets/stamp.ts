import { dayInWords } from './day.ts';

/** What was said when an edition went out. */
export interface Issued {
  readonly number: string;
  /** A day, as 2026-03-02. */
  readonly on: string;
  readonly purpose: string;
  readonly by: string;
}

/** Which paper this is: stands on cover and title block of every sheet. */
export interface Stamp {
  /** The day of printing. */
  readonly day: string;
  /** Null: how the project stands today, which nobody issued. */
  readonly issued: Issued | null;
  /** "PRELIMINARY: …"; empty once nothing stands in the way. */
  readonly standing: string;
}

export function draftOf(day: string, standing = ''): Stamp {
  return { day, issued: null, standing };
}

/** "2, March 2, 2026, for bid". */
export function editionInWords({ issued }: Pick<Stamp, 'issued'>): string {
  if (!issued) return 'not issued';
  const { number, on, purpose } = issued;
  const parts = [number, dayInWords(on)];
  if (purpose !== '') parts.push(/^for\b/i.test(purpose) ? purpose : `for ${purpose}`);
  return parts.join(', ');
}

/** How far the paper may be relied on, in two words; the reasons stand on the cover and in the margin. */
export function statusInWords({ issued, standing }: Stamp): string {
  const whole = standing === '' ? 'complete' : 'preliminary';
  return issued ? `Issued, ${whole}` : `Draft, ${whole}`;
}

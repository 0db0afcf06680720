const format = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** Stored times are world time; a person reads their own. */
export function when(instant: string): string {
  const time = Date.parse(instant);
  return Number.isNaN(time) ? instant : format.format(time);
}

export function kilobytes(size: number): string {
  return size < 1_000_000
    ? `${Math.max(1, Math.round(size / 1000))} kB`
    : `${(size / 1_000_000).toFixed(1)} MB`;
}

/** The day it is where the user sits, as 2026-03-02. An instant alone would give tomorrow's date on a western evening. */
export function dayOf(instant: string): string {
  const at = new Date(instant);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

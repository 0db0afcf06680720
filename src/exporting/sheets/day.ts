const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** "March 2, 2026" from "2026-03-02": a month in words cannot be mistaken for a day. */
export function dayInWords(day: string): string {
  const [year = '', month = '', date = ''] = day.slice(0, 10).split('-');
  const name = months[Number(month) - 1];
  return name === undefined ? day : `${name} ${Number(date)}, ${year}`;
}

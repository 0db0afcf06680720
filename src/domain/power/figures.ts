/** "0.3 A", "4.17 A": two figures behind the point, no noughts at the end. */
const plain = (value: number, places: number) => String(Number(value.toFixed(places)));

export const amps = (value: number) => `${plain(value, 2)} A`;
export const volts = (value: number) => `${plain(value, 1)} V`;
export const exactVolts = (value: number) => `${value.toFixed(2)} V`;
export const hours = (value: number) => `${plain(value, 1)} h`;
export const ampHours = (value: number) => `${plain(value, 1)} Ah`;
export const feet = (value: number) => `${Math.round(value).toLocaleString('en-US')} ft`;
export const percent = (share: number) => `${plain(share * 100, 1)} %`;

/** "101, 102, 103 and 4 more". */
export function someMarks(marks: readonly string[], most = 8): string {
  if (marks.length <= most) return marks.join(', ');
  return `${marks.slice(0, most).join(', ')} and ${marks.length - most} more`;
}

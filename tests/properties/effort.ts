/** Long walks run as a sample beside every change, and whole with `npm run thorough`. */
export const thorough = process.env['MODE'] === 'thorough';

export function runs(sample: number, whole: number): number {
  return thorough ? whole : sample;
}

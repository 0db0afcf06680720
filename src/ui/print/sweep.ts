/** More than any browser gives to one buffer. */
const tooMuch = 2 ** 33;

/**
 * Pages that were laid out stay in memory until the browser sweeps, and it sees no hurry. Before Chromium refuses a
 * buffer for lack of memory it sweeps everything; other browsers refuse at once, or hand out room that nothing fills.
 */
export function sweepMemory(): void {
  try {
    Reflect.construct(ArrayBuffer, [tooMuch]);
  } catch {
    // Refused, as it should be.
  }
}

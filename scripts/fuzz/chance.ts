/** Numbers that look thrown and are the same for the same seed. */
export interface Chance {
  readonly below: (limit: number) => number;
  readonly of: <T>(list: readonly T[]) => T;
}

export function chance(seed: number): Chance {
  let state = Math.imul(seed, 0x9e3779b9) | 0;
  const below = (limit: number) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) % limit;
  };
  return { below, of: (list) => list[below(list.length)] as (typeof list)[number] };
}

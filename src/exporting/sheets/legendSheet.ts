import type { Decision } from '../../domain/decide/decision.ts';
import { symbolGroups } from '../drawing/symbols.ts';

/** How the letters and short words in the tables are read. */
const words: readonly (readonly [string, string])[] = [
  ['HS-', 'Hardware set. “Revision” counts how often all its openings changed since the number was given.'],
  ['New, Kept', 'Pieces that are bought, and pieces the survey saw in place that stay.'],
  ['incl.', 'Asked of another line of the set; no piece of its own.'],
  ['share', 'Bought once for several openings.'],
  ['R-, N-, T-, F-, B-', 'Rules, needs, traps, fit and contradictions of the rule book.'],
  ['—', 'Not surveyed, or nothing is chosen yet.'],
];

export interface LegendSheet {
  readonly groups: typeof symbolGroups;
  readonly words: typeof words;
}

/** What this project’s sheets use, and nothing else: a reader looks up what is before him. */
export function legendSheet(decisions: ReadonlyMap<string, Decision>): LegendSheet {
  const used = { device: new Set<string>(), failMode: new Set<string>(), release: new Set<string>() };
  for (const { chosen } of decisions.values()) {
    if (!chosen) continue;
    used.device.add(chosen.candidate.deviceId);
    used.failMode.add(chosen.candidate.failMode);
    used.release.add(chosen.candidate.release);
  }
  const groups = symbolGroups.flatMap((group) => {
    const ids = Object.hasOwn(used, group.id) ? used[group.id as keyof typeof used] : undefined;
    if (!ids) return [];
    const symbols = Object.fromEntries(Object.entries(group.symbols).filter(([id]) => ids.has(id)));
    return Object.keys(symbols).length === 0 ? [] : [{ ...group, symbols }];
  });
  return { groups, words };
}

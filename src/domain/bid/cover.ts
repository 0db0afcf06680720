/** What one opening could be bought as, and what that costs it. */
export interface Option {
  readonly content: string;
  readonly lost: number;
}

export interface Cover {
  readonly kept: ReadonlySet<string>;
  /** No choice has fewer. */
  readonly least: number;
}

/**
 * Few contents such that every opening has one of them. What an opening must have is taken; of the rest the content that
 * serves most openings, and at last what turned out to be needless is dropped. How good that is shows the bound: so many
 * openings that no two share a content need so many sets.
 */
export function chooseFewest(openings: readonly (readonly Option[])[]): Cover {
  const kept = new Set<string>();
  for (const options of openings) if (options.length === 1 && options[0]) kept.add(options[0].content);
  const isServed = (options: readonly Option[], by: ReadonlySet<string>) =>
    options.some(({ content }) => by.has(content));
  for (;;) {
    const open = openings.filter((options) => options.length > 0 && !isServed(options, kept));
    if (open.length === 0) break;
    kept.add(servesMost(open));
  }
  for (const content of [...kept].toReversed()) {
    const without = new Set([...kept].filter((one) => one !== content));
    if (openings.every((options) => options.length === 0 || isServed(options, without))) kept.delete(content);
  }
  return { kept, least: leastNeeded(openings) };
}

/** Most openings first, then the least lost, then the name, so that the answer does not hang on an order. */
function servesMost(open: readonly (readonly Option[])[]): string {
  const found = new Map<string, { openings: number; lost: number }>();
  for (const options of open) {
    for (const { content, lost } of options) {
      const before = found.get(content) ?? { openings: 0, lost: 0 };
      found.set(content, { openings: before.openings + 1, lost: before.lost + lost });
    }
  }
  const [best] = [...found].toSorted(
    ([a, one], [b, other]) => other.openings - one.openings || one.lost - other.lost || (a < b ? -1 : 1),
  );
  return best?.[0] ?? '';
}

/** Openings with the fewest options first: they block the least. */
function leastNeeded(openings: readonly (readonly Option[])[]): number {
  const used = new Set<string>();
  let needed = 0;
  for (const options of openings.toSorted((a, b) => a.length - b.length)) {
    if (options.length === 0 || options.some(({ content }) => used.has(content))) continue;
    needed += 1;
    for (const { content } of options) used.add(content);
  }
  return needed;
}

import { describe, expect, test } from 'vitest';
import { itemOf, type ItemId, items, sectionOf, sectionOfTrade, sections, trades } from '../devices/items.ts';
import { blockOf, blocks } from './sets.ts';

const ids = Object.keys(items) as readonly ItemId[];
const those = (which: (id: ItemId) => boolean) => ids.filter(which);
const named = (words: RegExp) => those((id) => words.test(items[id].name));

describe('every item has its place in a bid', () => {
  test.each(ids)('%s: a block, a trade and a section', (id) => {
    const { trade, section } = itemOf(id);
    expect(Object.keys(blocks)).toContain(blockOf(id));
    expect(Object.keys(trades)).toContain(trade);
    expect(Object.keys(sections)).toContain(sectionOf(id));
    // Said only where it is not the usual one, so that the trade can be read off its section.
    expect(section).not.toBe(sectionOfTrade[trade]);
  });

  test('what is done is no piece that is bought, and a paper says what it is', () => {
    const done = named(/^(remove|record|leaf and frame inspected|lock preparation)/i);
    expect(done.length).toBeGreaterThan(7);
    expect(done.filter((id) => blockOf(id) !== 'work')).toEqual([]);
    expect(those((id) => itemOf(id).step === 'paper' && blockOf(id) === 'goods')).toEqual([]);
  });

  test('what the owner does year after year is in no bid', () => {
    const duties = those((id) => blockOf(id) === 'duty');
    expect(duties).toEqual(['battery', 'staffMeans', 'yearlyInspection']);
    expect(new Set(duties.map((id) => itemOf(id).trade))).toEqual(new Set(['owner']));
  });
});

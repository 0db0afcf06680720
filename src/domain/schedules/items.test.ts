import { describe, expect, test } from 'vitest';
import { blockOf, blocks } from './sets.ts';
import { itemOf, type ItemId, items, sectionOf, sectionOfTrade, sections, trades } from '../devices/items.ts';

const ids = Object.keys(items) as readonly ItemId[];

describe('every item has its place in a bid', () => {
  test.each(ids)('%s: a block, a trade and a section', (id) => {
    const { name, trade, section, block, step } = itemOf(id);
    expect(Object.keys(blocks)).toContain(blockOf(id));
    expect(Object.keys(trades)).toContain(trade);
    expect(Object.keys(sections)).toContain(sectionOf(id));
    // Said only where it is not the usual one, so that the trade can be read off its section.
    expect(section).not.toBe(sectionOfTrade[trade]);
    // What is done is no piece that is bought, and what the owner does year after year is in no bid.
    if (/^(remove|record|leaf and frame inspected|lock preparation)/i.test(name)) expect(block).toBe('work');
    if (/annual|carried by all/i.test(name)) expect(block).toBe('duty');
    if (step === 'paper') expect(block).toBeDefined();
    if (block === 'duty') expect(trade).toBe('owner');
  });

  test('duties, work and goods are told apart as they stand here', () => {
    const count = (block: string) => ids.filter((id) => blockOf(id) === block);
    expect(count('duty')).toEqual(['battery', 'staffMeans', 'yearlyInspection']);
    expect(count('work').length).toBeGreaterThan(8);
    expect(count('goods').length).toBeGreaterThan(count('work').length);
  });
});

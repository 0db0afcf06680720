import type { Decision } from '../decide/decision.ts';
import { type ItemId, itemOf, items, type Trade, trades } from '../devices/items.ts';
import { fitNotes } from '../fit/notes.ts';
import { type Counting, countingOf, countingShort } from '../hardware/counting.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import { workNotes } from '../hardware/workNotes.ts';
import { fillSentence } from '../text/format.ts';
import { midSentence } from '../text/midSentence.ts';

export interface WorkLine {
  readonly sentence: string;
  readonly ruleId: string | undefined;
}
export interface ItemLine {
  readonly name: string;
  readonly quantity: number;
  readonly counting: Counting;
  /** The quantity, or why none is priced here: included, kept, a share. */
  readonly quantityWords: string;
  readonly standard: string;
  readonly trade: string;
  readonly ruleId: string | undefined;
}

/** What one trade must do. */
export interface TradeWork {
  readonly trade: string;
  readonly lines: readonly WorkLine[];
}

/** Work from the fit of the device, from the rules, and from the parts each trade must bring. */
export function workByTrade(decision: Decision): readonly TradeWork[] {
  const byTrade = new Map<Trade, WorkLine[]>();
  const put = (trade: Trade, line: WorkLine) => {
    const before = byTrade.get(trade) ?? [];
    if (!before.some((one) => one.sentence === line.sentence)) byTrade.set(trade, [...before, line]);
  };
  for (const note of workNotes(decision)) {
    const found = fitNotes[note];
    if (found) put(found.trade, { sentence: found.says, ruleId: undefined });
  }
  for (const step of decision.modifies) {
    if (step.clause.effect === 'modify') {
      put(step.clause.trade, {
        sentence: fillSentence(step.clause.says, decision.slots),
        ruleId: step.rule.id,
      });
    }
  }
  for (const step of decision.requires) {
    if (step.clause.effect !== 'require') continue;
    const [leads, ...others] = byTradeOf(step.clause.items);
    const ruleId = step.rule.id;
    if (leads) put(leads.trade, { sentence: fillSentence(step.clause.says, decision.slots), ruleId });
    // One sentence can ask something of several trades: the others are told what is theirs.
    for (const { trade, names } of others) put(trade, { sentence: `${names.join('; ')}.`, ruleId });
  }
  const parts = partsOf(decision);
  const bought = parts.filter((part) => countingOf(part, parts, leavesOf(decision)) === 'bought');
  for (const { trade, names } of byTradeOf(bought.map((part) => part.item))) {
    if (byTrade.has(trade)) continue;
    put(trade, { sentence: `Furnish and install: ${names.map(midSentence).join('; ')}.`, ruleId: undefined });
  }
  return (Object.keys(trades) as Trade[]).flatMap((trade) => {
    const lines = byTrade.get(trade);
    return lines ? [{ trade: trades[trade], lines }] : [];
  });
}

/** Items by who does the work, the trade of the first one first. */
function byTradeOf(ids: readonly ItemId[]): readonly { readonly trade: Trade; readonly names: string[] }[] {
  const found = new Map<Trade, string[]>();
  for (const id of ids) {
    const { trade, name } = itemOf(id);
    found.set(trade, [...(found.get(trade) ?? []), name]);
  }
  return [...found].map(([trade, names]) => ({ trade, names }));
}

export function itemLines(decision: Decision): readonly ItemLine[] {
  const parts = partsOf(decision);
  return parts.map((part) => {
    const counting = countingOf(part, parts, leavesOf(decision));
    const item: { name: string; trade: Trade; standard?: string } = items[part.item];
    return {
      name: item.name,
      quantity: part.quantity,
      counting,
      quantityWords: counting === 'bought' ? String(part.quantity) : countingShort[counting],
      standard: item.standard ?? '',
      trade: trades[item.trade],
      ruleId: part.ruleId,
    };
  });
}

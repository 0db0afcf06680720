// Every sheet speaks of the same arrangement, so none may say what the condition table does not. The sheets are read
// here as a person reads them: by their words.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countingOf } from '../../src/domain/decide/counting.ts';
import { leavesOf } from '../../src/domain/decide/inPlace.ts';
import { partsOf } from '../../src/domain/decide/parts.ts';
import { reportOf } from '../../src/domain/decide/report.ts';
import { type ItemId, items, trades } from '../../src/domain/devices/items.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { oneLineOf } from '../../src/domain/simulate/oneLine.ts';
import type { Outcome } from '../../src/domain/simulate/outcome.ts';
import { simulateOpening } from '../../src/domain/simulate/simulate.ts';
import { acceptanceTestOf } from '../../src/exporting/sequence/acceptance.ts';
import { sequenceOf } from '../../src/exporting/sequence/sequence.ts';
import { demo, demoOpenings, everyDemoPaper, onPaper, type OnPaper, paperOf } from './paperOpenings.ts';
import { aSurvey, type Survey } from './surveys.ts';

/** What a reader takes from a text about a door: whether it lets people in and out. Nothing where it is silent. */
function claims(text: string): { entry: Set<string>; exit: Set<string> } {
  const entry = new Set<string>();
  const exit = new Set<string>();
  const say = (set: Set<string>, word: string, pattern: RegExp) => pattern.test(text) && set.add(word);
  say(entry, 'unlocked', /outside unlocked|\bunlocks\b|lets go|gives way|nothing locks/i);
  say(entry, 'locked', /outside (stays )?locked|stays? locked|drops back to locked/i);
  say(
    exit,
    'free',
    /leaving (stays |is )?free|always opens|lets? people out|both sides open|only pushed or/i,
  );
  say(exit, 'after', /(leaving|opens) after \d+ s/i);
  say(exit, 'byStaff', /staff|attended place/i);
  say(exit, 'blocked', /leaving (is )?blocked|nobody gets out|nothing on the egress side opens/i);
  return { entry, exit };
}

function contradicts(text: string, outcome: Outcome): boolean {
  const { entry, exit } = claims(text);
  return [...entry].some((one) => one !== outcome.entry) || [...exit].some((one) => one !== outcome.exit);
}

/** Everything on paper that says what the fire alarm does at this opening; undefined where a sheet has no line for it. */
function onFireAlarm({ project, opening, decision }: OnPaper): Readonly<Record<string, string | undefined>> {
  const simulated = simulateOpening(project, opening, decision);
  const decisions = new Map([[opening.id, decision]]);
  return {
    schedule: decision.chosen ? scheduleRows(project, decisions)[0]?.fireAlarm : undefined,
    sequence: simulated && sequenceOf(simulated).lines.find((one) => one.event === 'Fire alarm')?.says,
    test: simulated && acceptanceTestOf(simulated).find((one) => one.about === 'Fire alarm')?.expect,
    oneLine: oneLineOf(decision)?.onFireAlarm,
  };
}

function disagreements(on: OnPaper): readonly string[] {
  const simulated = simulateOpening(on.project, on.opening, on.decision);
  if (!simulated?.outcomes.fireAlarm.applies) return [];
  const outcome = simulated.outcomes.fireAlarm;
  return Object.entries(onFireAlarm(on)).flatMap(([sheet, text]) =>
    text !== undefined && (contradicts(text, outcome) || claims(text).exit.size === 0)
      ? [`${on.name}: ${sheet} says “${text}”, the table ${outcome.entry}, ${outcome.exit}`]
      : [],
  );
}

describe('on fire alarm', () => {
  test('every sheet says what the condition table says, as decided', () => {
    expect(demoOpenings.flatMap((opening) => disagreements(onPaper(demo, opening)))).toEqual([]);
  });
  test('and with every candidate at every opening of the demo', () => {
    const wrong: string[] = [];
    for (const on of everyDemoPaper()) wrong.push(...disagreements(on));
    expect([wrong.length, ...wrong.slice(0, 20)]).toEqual([0]);
  }, 120_000);
  test('and at openings made up', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(...candidates), (survey, { id }) => {
        expect(disagreements(paperOf(survey, id))).toEqual([]);
      }),
      { numRuns: 1500, seed: 20261130 },
    );
  }, 120_000);
});

describe('work by trade', () => {
  /** Trades of what is required or bought here that read nothing under “Work by trade”. */
  function forgotten({ decision, name }: OnPaper): readonly string[] {
    const told = new Set(reportOf(decision).work.map((one) => one.trade));
    const parts = partsOf(decision);
    const wanted = new Set<ItemId>([
      ...decision.requires.flatMap(({ clause }) => (clause.effect === 'require' ? clause.items : [])),
      ...parts
        .filter((part) => countingOf(part, parts, leavesOf(decision)) === 'bought')
        .map((part) => part.item),
    ]);
    return [...wanted].flatMap((item) => {
      const trade = trades[items[item].trade];
      return told.has(trade) ? [] : [`${name}: ${item} and no line for the ${trade}`];
    });
  }
  test('every trade of a required item or a bought part has a line, as decided', () => {
    expect(demoOpenings.flatMap((opening) => forgotten(onPaper(demo, opening)))).toEqual([]);
  });
  test('and at openings made up, whatever stands there', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(...candidates), (survey, { id }) => {
        expect(forgotten(paperOf(survey, id))).toEqual([]);
      }),
      { numRuns: 1000, seed: 20261130 },
    );
  }, 120_000);
});

describe('quantities', () => {
  test('signs and brackets of a pair are counted with its devices, of every kind alike', () => {
    const pair: Survey = {
      basis: { ibc: 2021, nfpa101: null, nec: 2020, nfpa72: 2019 },
      facts: {
        doorType: 'pair',
        leafMaterial: 'hollowMetal',
        frameMaterial: 'hollowMetal',
        latch: 'verticalRods',
        egressRole: 'exteriorExit',
        occupancyGroup: 'B',
        sprinklered: true,
        detectionThroughout: true,
        fireAlarm: true,
        wishDelay30s: true,
        delay30sApproved: true,
        wishDelayedEgress: true,
      },
    };
    for (const swingsWithEgress of [true, false]) {
      const { decision } = paperOf(
        { ...pair, facts: { ...pair.facts, swingsWithEgress } },
        'delayedMagnet/safe/delayed',
      );
      const parts = partsOf(decision);
      const devices = parts.find((part) => part.item === 'delayedMagnet')?.quantity;
      const sign = parts.find((part) => part.item.startsWith('signDelayed'));
      expect(devices).toBe(2);
      expect([sign?.item, sign?.quantity]).toEqual([
        swingsWithEgress ? 'signDelayed30' : 'signDelayedPull30',
        devices,
      ]);
    }
  });
});

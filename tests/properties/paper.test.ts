// Every sheet speaks of the same arrangement, so none may say what the condition table does not. The sheets are read
// here as a person reads them: by their words.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countingOf } from '../../src/domain/hardware/counting.ts';
import { leavesOf } from '../../src/domain/hardware/inPlace.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import { reportOf } from '../../src/domain/words/report.ts';
import { type ItemId, items, trades } from '../../src/domain/devices/items.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { slotOf } from '../../src/domain/logic/slots.ts';
import { sizeInWords } from '../../src/domain/words/openingWords.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { oneLineOf } from '../../src/domain/schedules/oneLine.ts';
import type { Outcome } from '../../src/domain/simulate/outcome.ts';
import { simulateOpening } from '../../src/domain/decide/whatHappens.ts';
import { acceptanceTestOf } from '../../src/exporting/sequence/acceptance.ts';
import { delayTest } from '../../src/exporting/sequence/delayTest.ts';
import { sequenceOf } from '../../src/exporting/sequence/sequence.ts';
import { openingSheet } from '../../src/exporting/sheets/openingSheet.ts';
import { draftOf } from '../../src/exporting/sheets/stamp.ts';
import { reviewRegister } from '../../src/exporting/sheets/reviewRegister.ts';
import { runs } from './effort.ts';
import {
  demo,
  demoOpenings,
  everyDemoPaper,
  onPaper,
  type OnPaper,
  paperOf,
  withCandidate,
} from './paperOpenings.ts';
import { aSurvey, type Survey } from './surveys.ts';

/** What a reader takes from a text about a door: whether it lets people in and out. Nothing where it is silent. */
function claims(text: string): { entry: Set<string>; exit: Set<string> } {
  const entry = new Set<string>();
  const exit = new Set<string>();
  const say = (set: Set<string>, word: string, pattern: RegExp) => pattern.test(text) && set.add(word);
  say(entry, 'unlocked', /outside unlocked|\bunlocks\b|lets go|gives way|nothing locks/i);
  say(entry, 'locked', /outside (stays )?locked|stays? locked|goes back to locked/i);
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
  // A fire finds a scheduled lock in one of two states, and a text that tells both must tell both.
  const states = outcome.hours ? Object.values(outcome.hours) : [outcome];
  const says = (one: string, key: 'entry' | 'exit') => states.some((state) => state[key] === one);
  return (
    [...entry].some((one) => !says(one, 'entry')) ||
    [...exit].some((one) => !says(one, 'exit')) ||
    (outcome.hours !== null && !/in unlocked hours/i.test(text))
  );
}

/** Everything on paper that says what the fire alarm does at this opening; undefined where a sheet has no line for it. */
function onFireAlarm({ project, opening, decision }: OnPaper): Readonly<Record<string, string | undefined>> {
  const simulated = simulateOpening(project, opening, decision);
  const decisions = new Map([[opening.id, decision]]);
  return {
    schedule: decision.chosen ? scheduleRows(project, decisions)[0]?.fireAlarm : undefined,
    sequence: simulated && sequenceOf(simulated).lines.find((one) => one.event === 'Fire alarm')?.says,
    test:
      simulated &&
      acceptanceTestOf({ simulated, decision }).find((one) => one.about === 'Fire alarm')?.expect,
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
      { numRuns: runs(150, 1500), seed: 20261130 },
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
      { numRuns: runs(125, 1000), seed: 20261130 },
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

describe('acceptance test', () => {
  const testOf = ({ project, opening, decision }: OnPaper) => {
    const simulated = simulateOpening(project, opening, decision);
    return simulated ? { simulated, decision } : undefined;
  };
  /** Expected results that no technician may sign, or two that cannot both come true at one door. */
  function impossible(on: OnPaper): readonly string[] {
    const tested = testOf(on);
    if (!tested) return [];
    const lines = acceptanceTestOf(tested);
    const { latch, failMode } = tested.simulated.arrangement;
    const wrong = lines.flatMap(({ about, act, expect: expected, source }) => [
      ...(/blocked|nobody/i.test(expected) ? [`${about}: “${expected}”`] : []),
      ...(/for one second|short push|does not start/i.test(`${act} ${expected}`)
        ? [`${about}: “${act}”`]
        : []),
      // No door is at once locked by its latching lock, or without current in it, and unlatched.
      ...(latch === 'whileLocked' &&
      /outside locked[^.]*not latched|not energized[^.]*not latched/i.test(
        failMode === 'secure' ? expected : '',
      )
        ? [`${about}: “${expected}” is two states in one`]
        : []),
      ...(failMode === 'none' && /lock supply|branch breaker|disconnect the battery/i.test(act)
        ? [`${about}: there is nothing to turn off`]
        : []),
      ...(/\d|\b(ten|half|thirty) /i.test(`${act} ${expected}`) && source === ''
        ? [`${about}: whose figure?`]
        : []),
    ]);
    const { outcomes, findings } = tested.simulated;
    // People are let out by it in the table, or the sheet may not ask for it.
    if (outcomes.buttonDeadController.exit !== 'free' && lines.some((one) => one.about === 'Exit button'))
      wrong.push('the button frees nobody and is to be tested as freeing');
    if (findings.some((one) => one.severity === 'severe') && lines.length > 0)
      wrong.push('a severe finding is to be confirmed by test');
    const candidate = on.decision.chosen?.candidate ?? on.decision.overridden;
    if (on.decision.rejected.some((one) => one.candidate === candidate) && lines.length > 0)
      wrong.push('what a rule forbids is to be confirmed by test');
    return wrong.map((one) => `${on.name}: ${one}`);
  }
  test('nothing is expected that people may not rely on, every figure says whose it is, as decided', () => {
    expect(demoOpenings.flatMap((opening) => impossible(onPaper(demo, opening)))).toEqual([]);
  });
  test('and with every candidate at every opening of the demo', () => {
    const wrong: string[] = [];
    for (const on of everyDemoPaper()) wrong.push(...impossible(on));
    expect([wrong.length, ...wrong.slice(0, 20)]).toEqual([0]);
  }, 120_000);
  test('the push that starts a delay is the adopted one; where nobody stated it, the sheet says so', () => {
    const delayed: Survey = { facts: {}, basis: { ibc: 2021, nfpa101: null, nec: 2020, nfpa72: 2019 } };
    const delay = (facts: Survey['facts']) => {
      const tested = testOf(paperOf({ ...delayed, facts }, 'delayedExitDevice/safe/delayed'));
      if (!tested) throw new Error('Nothing is chosen.');
      return delayTest(tested);
    };
    expect(delay({ delayStartS: 1 }).act).toContain('for no longer than 1 s');
    expect(delay({ delayStartS: 1 }).source).toContain('as the project states it');
    expect(delay({}).act).toContain('the time that the adopted text names');
    expect(delay({}).source).toMatch(
      /not stated in this project.* 3 s, from memory; some adopted texts name 1 s/,
    );
  });
});

describe('what decisions lean on', () => {
  const sheetOf = ({ project, opening, decision }: OnPaper) => {
    const [row] = scheduleRows(project, new Map([[opening.id, decision]]));
    if (!row) throw new Error('No row.');
    return openingSheet(project, opening, row, decision, reportOf(decision), draftOf('2026-01-01'));
  };
  const labels = ['Occupancy', 'Occupant load', 'Sprinklered', 'detection', 'Fire alarm', 'Egress'];

  test('stands on the opening sheet and the register, in the same words', () => {
    for (const opening of demoOpenings) {
      const on = onPaper(demo, opening);
      const { leanedOn } = sheetOf(on);
      for (const label of labels)
        expect(leanedOn.some((one) => one.label.includes(label) && one.value !== '')).toBe(true);
      const [entry] = reviewRegister(on.project, new Map([[opening.id, on.decision]]));
      if (entry) expect(entry.leanedOn).toEqual(leanedOn);
    }
  });
  test('the switch that lets people out is drawn wherever it is the way out', () => {
    for (const opening of demoOpenings) {
      for (const on of [
        onPaper(demo, opening),
        onPaper(demo, withCandidate(opening, 'magnet/safe/doorSwitch')),
      ]) {
        const { decision } = on;
        if (decision.chosen?.candidate.release !== 'doorSwitch') continue;
        if (decision.slots[slotOf('isSwinging')] !== true) continue;
        expect([on.name, JSON.stringify(sheetOf(on).drawings[0])]).toEqual([
          on.name,
          expect.stringMatching(/with a switch|Switch in lever/),
        ]);
      }
    }
  });
  test('a switched bar is bought for each leaf that opens, none for a leaf on manual bolts', () => {
    const facts = {
      doorType: 'pair',
      leafMaterial: 'hollowMetal',
      frameMaterial: 'hollowMetal',
      latch: 'pushPull',
      egressRole: 'exitAccess',
    } as const;
    const basis = demo.basis;
    for (const [inactiveBolts, bars] of [
      ['manualFlush', 1],
      ['none', 2],
    ] as const) {
      const on = paperOf({ facts: { ...facts, inactiveBolts }, basis }, 'magnet/safe/doorSwitch');
      const bought = partsOf(on.decision).find((part) => part.item === 'doorSwitchHardware')?.quantity;
      expect([inactiveBolts, bought]).toEqual([inactiveBolts, bars]);
    }
  });
  test('everything that asks for exit or tells of one is on the one-line diagram', () => {
    const drawn: Partial<Record<ItemId, string>> = {
      requestToExit: 'requestToExit',
      exitShuntSensor: 'exitShunt',
      exitSensor: 'exitSensor',
      pushToExit: 'button',
      doorSwitchHardware: 'hardwareSwitch',
    };
    const missing: string[] = [];
    for (const on of everyDemoPaper()) {
      const wires = oneLineOf(on.decision);
      if (!wires) continue;
      const ids: readonly string[] = [...wires.circuit, ...wires.signals].map((one) => one.id);
      for (const { item } of partsOf(on.decision)) {
        const wanted = drawn[item];
        if (wanted !== undefined && !ids.includes(wanted)) missing.push(`${on.name}: ${item}`);
      }
    }
    expect(missing).toEqual([]);
  }, 60_000);
  test('the size of a pair says that it is of each leaf', () => {
    const sizes = demoOpenings.flatMap((opening) => {
      const { decision } = onPaper(demo, opening);
      return decision.slots[slotOf('isPair')] === true ? [sizeInWords(decision)] : [];
    });
    expect(sizes.length).toBeGreaterThan(5);
    for (const size of sizes) expect(size).toMatch(/ in each leaf$/);
  });
});

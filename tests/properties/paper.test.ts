// Every sheet speaks of the same arrangement, so none may say what the condition table does not. The sheets are read
// here as a person reads them: by their words.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { oneLineOf } from '../../src/domain/simulate/oneLine.ts';
import type { Outcome } from '../../src/domain/simulate/outcome.ts';
import { simulateOpening } from '../../src/domain/simulate/simulate.ts';
import { acceptanceTestOf } from '../../src/exporting/sequence/acceptance.ts';
import { sequenceOf } from '../../src/exporting/sequence/sequence.ts';
import { demo, demoOpenings, everyDemoPaper, onPaper, type OnPaper, paperOf } from './paperOpenings.ts';
import { aSurvey } from './surveys.ts';

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

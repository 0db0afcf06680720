import { defaultBasis } from '../../src/domain/codes/basis.ts';
import { citesInWords } from '../../src/domain/decide/words.ts';
import { fillSentence } from '../../src/domain/explain/format.ts';
import { compile, type Slots, type Test } from '../../src/domain/logic/compile.ts';
import { fillDerived } from '../../src/domain/logic/derived.ts';
import { YES } from '../../src/domain/logic/verdict.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { type Line, measure, measureAsync } from './measure.ts';
import { surveyedFully } from './openings.ts';
import { type Chosen, chooseClauses, libraryEngine, plainFunction } from './sameRules.ts';

const clauseCount = 40;
const basis = { ...defaultBasis, nfpa101: 2021 } as const;

/** The same clauses in our form, without the index, which only pays for hundreds of them. */
function ours(chosen: readonly Chosen[]) {
  const tests = chosen.map(({ clause, rule }) => compile(clause.when, basis, rule.id));
  return (slots: Slots, hit: (clause: number) => void): void => {
    fillDerived(slots, basis);
    for (let which = 0; which < tests.length; which++) {
      if ((tests[which] as Test)(slots) === YES) hit(which);
    }
  };
}

interface Explained {
  readonly sentence: string;
  readonly cites: readonly string[];
}

export async function rulesBench(): Promise<{ lines: Line[]; agreed: string }> {
  const chosen = chooseClauses(clauseCount, basis);
  const openings = surveyedFully(5000);
  const slots = openings.map((facts) => slotsFrom(facts, basis));
  const ask = ours(chosen);
  const plain = plainFunction(chosen);
  const engine = libraryEngine(chosen);
  const library = async (facts: FactValues) => {
    const { events } = await engine.run({ ...facts });
    return events.map(({ type }) => Number(type));
  };

  const hits = await agree(openings, slots, chosen, ask, plain, library);
  const few = openings.slice(0, 200);
  const perOpening = (ms: number, count: number) => (ms * 1000) / count;
  const libraryTime = await measureAsync(5, async () => {
    for (const facts of few) await library(facts);
  });
  const libraryUs = perOpening(libraryTime.cpuMs, few.length);

  const steps: Explained[] = [];
  const explainedTime = measure(15, () => {
    for (const one of slots) {
      steps.length = 0;
      ask(one, (which) => {
        const { rule, clause } = chosen[which] as Chosen;
        steps.push({
          sentence: fillSentence(clause.says, one),
          cites: citesInWords({ rule }, basis),
        });
      });
    }
  });
  const explainedUs = perOpening(explainedTime.cpuMs, slots.length);

  // Both leave the same behind, an array of bytes, so that neither is spared the writing.
  const into = new Uint8Array(clauseCount);
  const mark = (which: number) => {
    into[which] = 1;
  };
  const barely = measure(25, () => {
    for (const one of slots) {
      into.fill(0);
      ask(one, mark);
    }
  });
  const barelyUs = perOpening(barely.cpuMs, slots.length);
  const written = measure(25, () => {
    for (const facts of openings) {
      into.fill(0);
      plain(facts, into);
    }
  });
  const writtenUs = perOpening(written.cpuMs, slots.length);

  const us = (value: number) => `${value.toFixed(2)} µs an opening`;
  const faster = libraryUs / explainedUs;
  const slower = barelyUs / writtenUs;
  return {
    agreed: `${chosen.length} clauses of ${new Set(chosen.map((one) => one.rule.id)).size} rules, ${openings.length} openings, ${hits} hits: all forms agree.`,
    lines: [
      { what: 'json-rules-engine 7.3.1', figure: us(libraryUs) },
      { what: 'ours, with sentence and cites', figure: us(explainedUs) },
      { what: 'ours, answers only', figure: us(barelyUs) },
      { what: 'plain code for the same clauses', figure: us(writtenUs) },
      {
        what: 'library ÷ ours with sentence and cites',
        figure: `${faster.toFixed(0)} times`,
        goal: 'at least 200 times',
        met: faster >= 200,
      },
      { what: 'library ÷ ours, answers only', figure: `${(libraryUs / barelyUs).toFixed(0)} times` },
      {
        what: 'ours, answers only ÷ plain code',
        figure: `${slower.toFixed(1)} times`,
        goal: 'at most 3 times',
        met: slower <= 3,
      },
    ],
  };
}

/** Throws at the first opening of which the three forms say different things. */
async function agree(
  openings: readonly FactValues[],
  slots: readonly Slots[],
  chosen: readonly Chosen[],
  ask: ReturnType<typeof ours>,
  plain: ReturnType<typeof plainFunction>,
  library: (facts: FactValues) => Promise<number[]>,
): Promise<number> {
  let hits = 0;
  for (const [index, facts] of openings.entries()) {
    const mine: number[] = [];
    ask(slots[index] as Slots, (which) => mine.push(which));
    const into = new Uint8Array(chosen.length);
    plain(facts, into);
    const written = [...into.keys()].filter((which) => into[which] === 1);
    const theirs = (await library(facts)).toSorted((a, b) => a - b);
    if (String(mine) !== String(written) || String(mine) !== String(theirs)) {
      throw new Error(
        `Opening ${index}: ours [${mine.join()}], plain code [${written.join()}], library [${theirs.join()}]; ${JSON.stringify(facts)}`,
      );
    }
    hits += mine.length;
  }
  return hits;
}

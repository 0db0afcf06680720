import { defaultBasis } from '../../src/domain/codes/basis.ts';
import { type Answers, answersOf, lowestBit } from '../../src/domain/decide/clauseIndex.ts';
import { putInto } from '../../src/domain/decide/factView.ts';
import { indexClauses } from '../../src/domain/decide/indexClauses.ts';
import { citesInWords } from '../../src/domain/words/steps.ts';
import { fillSentence } from '../../src/domain/text/format.ts';
import { type Slots, slotCount } from '../../src/domain/logic/slots.ts';
import { fillDerived } from '../../src/domain/logic/derived.ts';
import type { Facts } from '../../src/domain/model/fact.ts';
import { answersByHand, type ByHand } from './byHand/clauses.ts';
import { type Line, measure, measureAsync } from './measure.ts';
import { surveyedFully, surveyedInPart, unasked, valuesOf } from './openings.ts';
import { type Chosen, clausesNamed, libraryEngine } from './sameRules.ts';

const basis = { ...defaultBasis, nfpa101: 2021 } as const;
const names = Object.keys(answersByHand({})) as (keyof ByHand)[];
const chosen = clausesNamed(names, basis);
const ruleCount = new Set(chosen.map(({ rule }) => rule)).size;

const index = indexClauses(
  chosen.map(({ clause }) => clause.when),
  basis,
);
const slots: Slots = new Array<Slots[number]>(slotCount).fill(undefined);
/**
 * The chosen clauses in our form: the survey read, facts derived, clauses answered, each by what `decide` uses. What it
 * gives holds until the next opening.
 */
function answersHere(facts: Facts): Answers {
  slots.fill(undefined);
  putInto(slots, facts);
  fillDerived(slots, basis);
  return answersOf(index, slots);
}

interface Explained {
  readonly sentence: string;
  readonly cites: readonly string[];
}

function explain(facts: Facts): Explained[] {
  const { sure } = answersHere(facts);
  const steps: Explained[] = [];
  for (let word = 0; word < sure.length; word++) {
    for (let bits = sure[word] as number; bits !== 0; bits &= bits - 1) {
      const { rule, clause } = chosen[lowestBit(word, bits)] as Chosen;
      steps.push({ sentence: fillSentence(clause.says, slots), cites: citesInWords({ rule }, basis) });
    }
  }
  return steps;
}

export async function rulesBench(): Promise<{ lines: Line[]; agreed: string }> {
  const full = surveyedFully(5000);
  const inPart = full.map(surveyedInPart);
  const engine = libraryEngine(chosen);
  const agreed = await agree(full, [...full, ...inPart, ...inPart.map(unasked)], engine);

  const few = full.slice(0, 200);
  const perOpening = (ms: number, count: number) => (ms * 1000) / count;
  const values = few.map(valuesOf);
  const libraryTime = await measureAsync(5, async () => {
    for (const one of values) await engine.run({ ...one });
  });
  const libraryUs = perOpening(libraryTime.cpuMs, few.length);

  // Few openings many times: it is the rules that are timed here, not the fetching of facts from memory.
  const timed = (openings: readonly Facts[], work: (facts: Facts) => unknown) => {
    const { cpuMs } = measure(25, () => {
      for (let round = 0; round < 20; round++) for (const facts of openings) work(facts);
    });
    return perOpening(cpuMs, 20 * openings.length);
  };
  const explainedUs = timed(few, explain);
  const onFull = timed(few, answersHere);
  const half = few.map((facts, at) => (at % 2 === 0 ? facts : (inPart[at] as Facts)));
  const onHalf = timed(half, answersHere);
  const byHand = timed(half, answersByHand);

  const us = (value: number) => `${value.toFixed(2)} µs an opening`;
  const faster = libraryUs / explainedUs;
  const slower = onHalf / byHand;
  return {
    agreed,
    lines: [
      { what: 'json-rules-engine 7.3.1', figure: us(libraryUs) },
      { what: 'ours, with sentence and cites', figure: us(explainedUs) },
      { what: 'ours, answers only', figure: us(onFull) },
      {
        what: 'library ÷ ours with sentence and cites',
        figure: `${faster.toFixed(0)} times`,
        goal: 'at least 200 times',
        met: faster >= 200,
      },
      { what: 'library ÷ ours, answers only', figure: `${(libraryUs / onFull).toFixed(0)} times` },
      { what: 'ours, answers only, half of the openings known in part', figure: us(onHalf) },
      { what: 'the same openings and clauses written out by hand', figure: us(byHand) },
      {
        what: 'ours, answers only ÷ by hand',
        figure: `${slower.toFixed(1)} times`,
        goal: 'at most 3 times',
        met: slower <= 3,
      },
    ],
  };
}

/** Throws at the first opening of which two forms say different things; the library is asked where all is known. */
async function agree(
  full: readonly Facts[],
  all: readonly Facts[],
  engine: ReturnType<typeof libraryEngine>,
): Promise<string> {
  const counts = { yes: 0, no: 0, unknown: 0 };
  for (const facts of all) {
    const answers = answersHere(facts);
    const byHand = answersByHand(facts);
    names.forEach((name, at) => {
      const mine = answerIn(answers, at);
      const written = byHand[name];
      const theirs = written === null ? 'unknown' : written ? 'yes' : 'no';
      if (mine !== theirs) throw differ(name, facts, mine, `by hand ${theirs}`);
      counts[mine]++;
    });
  }
  for (const facts of full) {
    const { events } = await engine.run({ ...valuesOf(facts) });
    const theirs = new Set(events.map(({ type }) => Number(type)));
    const answers = answersHere(facts);
    names.forEach((name, at) => {
      const mine = answerIn(answers, at);
      if ((mine === 'yes') !== theirs.has(at)) throw differ(name, facts, mine, 'library otherwise');
    });
  }
  const each = Object.entries(counts).map(([answer, count]) => `${count} ${answer}`);
  return `${names.length} clauses of ${ruleCount} rules, ${all.length} openings (${each.join(', ')}): all forms agree.`;
}

function answerIn({ speak, sure }: Answers, at: number): 'yes' | 'no' | 'unknown' {
  const isIn = (set: Int32Array) => (((set[at >>> 5] as number) >>> (at & 31)) & 1) === 1;
  return isIn(sure) ? 'yes' : isIn(speak) ? 'unknown' : 'no';
}

function differ(name: string, facts: Facts, mine: string, theirs: string): Error {
  return new Error(`${name}: ours ${mine}, ${theirs}; ${JSON.stringify(valuesOf(facts))}`);
}

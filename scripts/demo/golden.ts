import { decideInBuilding } from '../../src/domain/building/joined.ts';
import type { Decision } from '../../src/domain/decide/decision.ts';
import { partsOf } from '../../src/domain/hardware/parts.ts';
import { factsIn, type Step } from '../../src/domain/decide/ruleBook.ts';
import { signOffReasons } from '../../src/domain/words/signOff.ts';
import { stepKinds } from '../../src/domain/decide/steps.ts';
import type { FactKey } from '../../src/domain/model/fields.ts';
import { type Opening, openingsInOrder, type Project } from '../../src/domain/model/project.ts';
import { orderState } from '../../src/domain/sets/forOrder.ts';
import { missingKeys } from '../../src/domain/sets/missing.ts';

const named = ({ rule, clause, sure }: Step) => `${rule.id}${clause.key ?? ''}${sure ? '' : '?'}`;

/** How many candidates each rule keeps off the door. */
function countedByRule(decision: Decision): Readonly<Record<string, number>> {
  const counts = new Map<string, number>();
  for (const { because } of decision.rejected) {
    for (const step of because) counts.set(named(step), (counts.get(named(step)) ?? 0) + 1);
  }
  return Object.fromEntries([...counts].toSorted(([a], [b]) => (a < b ? -1 : 1)));
}

/** Everything a decision says, by name: sentences are tested beside the rules that say them. */
function goldenRecord(project: Project, opening: Opening, decision: Decision) {
  const facts = (keys: Iterable<FactKey>) => [...keys].toSorted();
  return {
    mark: opening.mark,
    state: decision.state,
    stands: decision.stands,
    order: orderState(project, opening, decision),
    candidate: decision.chosen?.candidate.id ?? null,
    tenths: decision.chosen?.score.tenths ?? null,
    cell: decision.chosen?.cell ?? null,
    overridden: decision.overridden?.id ?? null,
    runnerUp: decision.runnerUp?.candidate.id ?? null,
    nearTie: decision.nearTie,
    reasonsToSign: signOffReasons(decision).map(({ grade, flag }) => `${grade} ${flag}`),
    ...Object.fromEntries(stepKinds.map((kind) => [kind, decision[kind].map(named)])),
    severe: decision.severe.map(({ key }) => key),
    passedOver: decision.passedOver.map(({ candidate }) => candidate.id),
    parts: partsOf(decision),
    rows: decision.rows.map(({ row }) => row),
    rejected: countedByRule(decision),
    open: decision.open.map(({ candidate, tenths }) => `${candidate.id} ${tenths}`),
    wouldHaveLed: decision.wouldHaveLed?.candidate.id ?? null,
    assumed: Object.fromEntries([...decision.assumed].toSorted(([a], [b]) => (a < b ? -1 : 1))),
    relied: facts(factsIn(decision.relied)),
    missing: facts(missingKeys(project, opening, decision)),
  };
}

/** One JSON object per line, in the order of the schedule. */
export function goldenText(project: Project): string {
  const decisions = decideInBuilding(project);
  return openingsInOrder(project)
    .flatMap((opening) => {
      const decision = decisions.get(opening.id);
      return decision ? [`${JSON.stringify(goldenRecord(project, opening, decision))}\n`] : [];
    })
    .join('');
}

/** What became another, opening by opening and field by field, short enough to be read. */
export function goldenDifferences(expected: string, found: string): readonly string[] {
  const [before, after] = [expected, found].map(
    (text) =>
      new Map(
        text
          .trimEnd()
          .split('\n')
          .map((line) => {
            const record = JSON.parse(line) as Readonly<Record<string, unknown>>;
            return [String(record['mark']), record] as const;
          }),
      ),
  );
  return [...new Set([...(before?.keys() ?? []), ...(after?.keys() ?? [])])].flatMap((mark) => {
    const [was, is] = [before?.get(mark), after?.get(mark)];
    if (!was || !is) return [`${mark}: ${was ? 'gone' : 'new'}`];
    return [...new Set([...Object.keys(was), ...Object.keys(is)])].flatMap((field) => {
      const [one, two] = [was[field], is[field]].map((value) => JSON.stringify(value) ?? 'nothing');
      return one === two ? [] : [`${mark}, ${field}: was ${one}, is ${two}`];
    });
  });
}

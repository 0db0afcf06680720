import { answersTo } from '../decide/answers.ts';
import { countingOf } from '../hardware/counting.ts';
import { decide } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { leavesOf } from '../hardware/inPlace.ts';
import { partsOf } from '../hardware/parts.ts';
import { answered, waitingFor } from '../decide/whatMatters.ts';
import { workNotes } from '../hardware/workNotes.ts';
import { readableAt, type Slots } from '../logic/slots.ts';
import { missingFacts } from '../logic/missing.ts';
import { type FactKey, type AnyValue } from '../model/fields.ts';
import type { Opening, Project } from '../model/project.ts';
import { isSigned, reviewState } from '../review/status.ts';
import { detailOf } from './setLines.ts';
import { signatureWith } from '../hardware/signature.ts';

const remembered = new WeakMap<Decision, readonly FactKey[]>();

/**
 * Facts nobody knows yet that would change what is ordered for the choice: its hardware set, a detail that a line is
 * ordered by, the work of a trade. No list of such facts is kept: the order is put together while it is noted what was
 * read and not known, and of that each answer is tried, then each two that only count together.
 */
export function missingForOrder(project: Project, opening: Opening, decision: Decision): readonly FactKey[] {
  const { alone } = decision;
  let found = remembered.get(alone);
  if (!found) {
    found = decision.chosen ? search(project, opening, alone) : [];
    remembered.set(alone, found);
  }
  return found;
}

/**
 * `complete`: may be ordered as it is listed, no unknown fact can change arrangement, signatures, items or a trade's
 * work, and whoever must sign has signed. `unsigned`: a signature that is due is missing, stale or was refused.
 * `incomplete`: settled, but the order still waits for facts.
 */
export type OrderState = 'complete' | 'unsigned' | 'incomplete' | 'unsettled';

export function orderState(project: Project, opening: Opening, decision: Decision): OrderState {
  if (decision.state === 'left') return 'complete';
  if (decision.state !== 'settled') return 'unsettled';
  if (missingForOrder(project, opening, decision).length > 0) return 'incomplete';
  return isSigned(reviewState(project, opening, decision)) ? 'complete' : 'unsigned';
}

/** What stands in the way of an order, the gravest first. */
export const notYetOrdered = ['unsettled', 'incomplete', 'unsigned'] as const satisfies readonly OrderState[];

export const orderStateWords: Record<OrderState, string> = {
  complete: 'May be ordered',
  unsigned: 'Not signed, do not order',
  incomplete: 'Not complete, do not order',
  unsettled: 'Not settled, do not order',
};

/** In place of an order where nothing is wanted. */
export const nothingToBuy = 'Nothing to buy';

interface Order {
  readonly text: string;
  /** Facts that were read while the order was put together and are not known. */
  readonly unread: readonly FactKey[];
}

function search(project: Project, opening: Opening, decision: Decision): readonly FactKey[] {
  const { text, unread } = orderOf(decision);
  // The same two answers are met from both sides.
  const tried = new Map<string, Order | undefined>();
  const told = (...answers: readonly (readonly [FactKey, AnyValue])[]) => {
    const name = answers
      .map(([key, value]) => `${key} ${value}`)
      .toSorted()
      .join('|');
    if (!tried.has(name)) tried.set(name, orderAfter(answers));
    return tried.get(name);
  };
  const orderAfter = (answers: readonly (readonly [FactKey, AnyValue])[]) => {
    const [one, other] = answers.reduce<[Project, Opening]>(
      (at, [fact, answer]) => answered(...at, fact, answer),
      [project, opening],
    );
    const after = decide(one, other);
    return after.state === 'refused' ? undefined : orderOf(after);
  };
  // What a trade may have to do is in doubt by itself, whatever else is read.
  const found = new Set<FactKey>(workInDoubt(decision));
  const silent: FactKey[] = [];
  for (const key of unread) {
    if (found.has(key)) continue;
    const tells = answersTo(key).some((value) => {
      const order = told([key, value]);
      return order !== undefined && order.text !== text;
    });
    if (tells) found.add(key);
    else silent.push(key);
  }
  for (const key of silent) if (tellsWithAnother(key)) found.add(key);
  return [...found];

  /** One that counts alone is asked in any case, and then this one is looked at again. */
  function tellsWithAnother(key: FactKey): boolean {
    return answersTo(key).some((value) => {
      const others = told([key, value])?.unread.filter((other) => other !== key && !found.has(other)) ?? [];
      return others.some((other) =>
        answersTo(other).some((answer) => {
          const order = told([key, value], [other, answer]);
          return order !== undefined && order.text !== text;
        }),
      );
    });
  }
}

function workInDoubt(decision: Decision): readonly FactKey[] {
  return [
    ...waitingFor(
      decision.depends.filter(({ clause }) => clause.effect === 'modify'),
      decision,
    ).keys(),
  ];
}

/** Everything an order says of one opening, put together from what the sets, their lines and the trades' work say. */
function orderOf(decision: Decision): Order {
  const read = new Set<number>();
  const seen: Decision = Object.create(decision, { slots: { value: noting(decision.slots, read) } });
  const parts = partsOf(seen);
  const member = [{ mark: '', decision: seen }];
  const details = parts.map((part) => {
    const counting = countingOf(part, parts, leavesOf(seen));
    return counting === 'included' || counting === 'kept' ? '' : detailOf(part.item, member);
  });
  const work = decision.modifies.map(({ rule, clause }) => `${rule.id}${clause.key ?? ''}`);
  const notes = workNotes(seen);
  const text = [signatureWith(seen, parts) ?? '', ...details, ...work, ...notes].join('\n');
  return { text, unread: [...surveyedBehind(read, decision)] };
}

/** The same slots, and a note of every one that was asked for while it is not known. */
function noting(slots: Slots, read: Set<number>): Slots {
  return new Proxy(slots, {
    get(target, at, receiver) {
      const value: unknown = Reflect.get(target, at, receiver);
      if (value === undefined && typeof at === 'string') read.add(Number(at));
      return value;
    },
  });
}

function surveyedBehind(read: ReadonlySet<number>, { basis, slots, rows }: Decision): ReadonlySet<FactKey> {
  const found = new Set<FactKey>();
  for (const slot of read) {
    missingFacts({ op: 'is', fact: readableAt(slot), values: [true] }, basis, slots, found);
  }
  // How the device goes in is read off one row of the fit table; while several are possible, what tells them apart.
  if (rows.length > 1) for (const row of rows) missingFacts(row.when, basis, slots, found);
  return found;
}

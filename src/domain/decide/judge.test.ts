import { expect, test } from 'vitest';
import { defaultBasis } from '../codes/basis.ts';
import { candidates } from '../devices/candidates.ts';
import { slotCount, slotOf, type Slots } from '../logic/slots.ts';
import { YES } from '../logic/verdict.ts';
import type { FactKey } from '../model/fields.ts';
import { answersTo } from './answers.ts';
import { has } from './candidateSet.ts';
import { judge } from './judge.ts';
import { makeRuleBook } from './ruleBook.ts';

const asked: readonly FactKey[] = ['doorType', 'leafMaterial', 'frameMaterial', 'latch'];
type Answers = Readonly<Record<string, string>>;

/** Every door, leaf, frame and latch there is. */
const doors: readonly Answers[] = asked.reduce<readonly Answers[]>(
  (sofar, key) => sofar.flatMap((one) => answersTo(key).map((value) => ({ ...one, [key]: String(value) }))),
  [{}],
);
const book = makeRuleBook(defaultBasis, []);

function slotsOf(answers: Answers): Slots {
  const slots: Slots = Array.from({ length: slotCount });
  slots[slotOf('fireRated')] = false;
  for (const key of asked) slots[slotOf(key)] = answers[key];
  return slots;
}

const judged = new Map<string, Uint32Array>();
function ruledOut(answers: Answers): Uint32Array {
  const name = JSON.stringify(answers);
  let found = judged.get(name);
  if (!found) {
    found = judge(book, slotsOf(answers)).rejected;
    judged.set(name, found);
  }
  return found;
}

test('no answer about door, leaf, frame or latch takes back what was ruled out before it was given', () => {
  const takenBack = new Set<string>();
  for (const door of doors) {
    const whole = ruledOut(door);
    for (const open of asked) {
      const before = Object.fromEntries(
        asked.filter((key) => key !== open).map((key) => [key, door[key] ?? '']),
      );
      const part = ruledOut(before);
      if (part.every((word, at) => (word & ~(whole[at] as number)) === 0)) continue;
      const device = candidates.find(({ index }) => has(part, index) && !has(whole, index))?.deviceId;
      takenBack.add(`${device}: ${open} = ${door[open]} at ${JSON.stringify(before)}`);
    }
  }
  expect([...takenBack].slice(0, 5)).toEqual([]);
});

test('no door, leaf, frame and latch stand in two rows of the fit table', () => {
  const twice = doors.filter((door) => {
    const slots = slotsOf(door);
    return book.rows.filter((row) => row.test(slots) === YES).length > 1;
  });
  expect(twice).toEqual([]);
});

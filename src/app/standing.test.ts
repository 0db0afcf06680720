import fc from 'fast-check';
import { expect, test } from 'vitest';
import { at } from '../storage/testing/projects.ts';
import { atFirst, type Standing, type StandingEvent, step, storedAt } from './standing.ts';

const after = (...events: readonly StandingEvent[]): Standing => events.reduce(step, atFirst);
const opened = { kind: 'opened', at: at(4), setAside: [] } as const;
const fromCopy = {
  kind: 'openedFromCopy',
  at: at(4),
  setAside: [],
  writes: true,
  path: [at(3), at(4)],
  done: [],
} as const;

test('an edit leads on from what is stored, and saving it catches up', () => {
  const edited = after(opened, { kind: 'changed', tip: 't5' });
  expect([edited.now, storedAt(edited)]).toEqual([at(5), at(4)]);
  expect(storedAt(step(edited, { kind: 'saved', at: at(5) }))).toEqual(at(5));
});

test('out of the second copy nothing counts as stored before the database has said what it holds', () => {
  const detached = after(fromCopy, { kind: 'changed', tip: 't5' }, { kind: 'saved', at: at(5) });
  expect([detached.base.kind, storedAt(detached), detached.now]).toEqual(['detached', null, at(5)]);
  expect(storedAt(step(detached, { kind: 'rejoined', stored: at(3) }))).toEqual(at(3));
  expect(step(detached, { kind: 'rejoined', stored: null }).base.kind).toBe('new');
});

test('a copy that is only shown asks nothing of the database', () => {
  expect(after({ ...fromCopy, writes: false }).base.kind).toBe('new');
});

test('only a project that is nowhere can stand in, and once stored it does so no longer', () => {
  expect(after(opened, { kind: 'standsIn' }).base.kind).toBe('stored');
  const standIn = after({ kind: 'startedNew', setAside: [] }, { kind: 'standsIn' });
  expect(standIn.base.kind).toBe('standIn');
  expect(step(standIn, { kind: 'saved', at: at(1) }).base.kind).toBe('stored');
});

test('cleared under the app, it is stored anew from where it stands', () => {
  const gone = after(opened, { kind: 'changed', tip: 't5' }, { kind: 'storedGone' });
  expect([storedAt(gone), gone.now]).toEqual([null, at(5)]);
});

const anEvent: fc.Arbitrary<StandingEvent> = fc.oneof(
  fc.constant(opened),
  fc.constant(fromCopy),
  fc.constant({ kind: 'startedNew', setAside: [] } as const),
  fc.constant({ kind: 'standsIn' } as const),
  fc.string({ minLength: 1, maxLength: 3 }).map((tip) => ({ kind: 'changed', tip }) as const),
  fc.nat(9).map((revision) => ({ kind: 'saved', at: at(revision) }) as const),
  fc.constant({ kind: 'rejoined', stored: at(3) } as const),
  fc.constant({ kind: 'storedGone' } as const),
  fc.constant({ kind: 'setAsideForgotten' } as const),
);

test('no event but opening takes the screen back, and an edit takes it exactly one further', () => {
  fc.assert(
    fc.property(fc.array(anEvent, { maxLength: 12 }), (events) => {
      let standing = atFirst;
      for (const event of events) {
        const before = standing;
        standing = step(standing, event);
        const isOpening = event.kind.startsWith('opened') || event.kind === 'startedNew';
        const further = event.kind === 'changed' ? 1 : 0;
        const goneOn = standing.now.revision - before.now.revision;
        expect(isOpening || goneOn === further).toBe(true);
      }
    }),
    { numRuns: 200 },
  );
});

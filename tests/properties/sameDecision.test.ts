import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { has } from '../../src/domain/decide/candidateSet.ts';
import { decide } from '../../src/domain/decide/decide.ts';
import { judge } from '../../src/domain/decide/judge.ts';
import { makeRuleBook, ruleBookFor } from '../../src/domain/decide/ruleBook.ts';
import { score, scoreAll, type ScoreFacts } from '../../src/domain/decide/score.ts';
import { candidates } from '../../src/domain/devices/candidates.ts';
import { type Cell, fitCell, fitRows } from '../../src/domain/fit/matrix.ts';
import { basisKey, type CodeBasis } from '../../src/domain/codes/basis.ts';
import type { FactValues } from '../../src/domain/model/fields.ts';
import type { Project } from '../../src/domain/model/project.ts';
import { defaultWeights, mostPreferencePoints, scoreParts } from '../../src/domain/model/project.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import { slotsFrom } from '../../src/domain/rules/runCase.ts';
import { aProject, aValueOf, someWeights as anyWeights } from '../../src/domain/testing/arbitraries.ts';
import { runs } from './effort.ts';
import { aSurvey, decideSurvey, essence } from './surveys.ts';
import { bases, seeded } from './space.ts';

describe('what must not matter', () => {
  test('the order of the rules', () => {
    const random = seeded(4);
    const shuffled = allRules
      .map((rule) => ({ rule, place: random() }))
      .toSorted((a, b) => a.place - b.place)
      .map(({ rule }) => rule);
    for (const basis of bases) {
      const books = [makeRuleBook(basis, shuffled), makeRuleBook(basis, allRules.toReversed())];
      fc.assert(
        fc.property(aSurvey, ({ facts }) => {
          const usual = essence(decideSurvey({ facts, basis }));
          for (const book of books) expect(essence(decideSurvey({ facts, basis }, book))).toEqual(usual);
        }),
        { numRuns: runs(30, 60), seed: 9 },
      );
    }
  }, 120_000);

  test('ids, marks, names, notes, floors, spaces’ names and the order of openings', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        const renamed = rename(project);
        for (const opening of Object.values(project.openings)) {
          const other = renamed.openings[`x${opening.id}`];
          if (!other) throw new Error('An opening was lost.');
          expect(essence(decide(renamed, other))).toEqual(essence(decide(project, opening)));
        }
      }),
      { numRuns: runs(50, 100), seed: 10 },
    );
  }, 120_000);
});

/** The same building under other names; what openings and spaces hold stays. */
function rename(project: Project): Project {
  const id = (text: string) => `x${text}`;
  const link = (text: string | null) => (text === null ? null : id(text));
  const table = <T extends { readonly id: string }>(
    things: Readonly<Record<string, T>>,
    change: (thing: T) => T,
  ) =>
    Object.fromEntries(
      Object.values(things)
        .toReversed()
        .map((thing) => [id(thing.id), { ...change(thing), id: id(thing.id) }]),
    );
  return {
    ...project,
    id: id(project.id),
    name: 'Another name',
    notes: 'Other notes',
    preparedBy: 'Somebody else',
    floors: table(project.floors, (floor) => ({
      ...floor,
      name: `${floor.name} again`,
      level: -floor.level,
    })),
    spaces: table(project.spaces, (space) => ({
      ...space,
      name: `${space.name} again`,
      floorId: link(space.floorId),
      securityLevel: space.securityLevel === 'public' ? 'critical' : 'public',
    })),
    openings: table(project.openings, (opening) => ({
      ...opening,
      mark: `M-${opening.mark}`.slice(0, 40),
      notes: 'Other notes',
      floorId: null,
      fromSpaceId: link(opening.fromSpaceId),
      toSpaceId: link(opening.toSpaceId),
    })),
  };
}

describe('the score', () => {
  const someWeights = fc.oneof(fc.constant(defaultWeights), anyWeights);
  const maybe = <K extends Parameters<typeof aValueOf>[0]>(key: K) =>
    fc.option(aValueOf(key), { nil: undefined });
  const someFacts = fc.record({
    securityNeed: maybe('securityNeed'),
    traffic: maybe('traffic'),
    appearance: maybe('appearance'),
    latch: maybe('latch'),
    leafMaterial: maybe('leafMaterial'),
    frameMaterial: maybe('frameMaterial'),
    frameGrouted: maybe('frameGrouted'),
    latchProjectionIn: fc.option(fc.constantFrom(0.1, 0.25, 0.375, 0.5, 0.75, 1), { nil: undefined }),
    wishedRelease: fc.constantFrom(undefined, 'delayed' as const, 'controlled' as const),
  }) as fc.Arbitrary<ScoreFacts>;
  const aRow = fc.option(fc.constantFrom(...fitRows), { nil: undefined });

  test('is its parts added up, within 0 and 1000, and the same one by one as all at once', () => {
    fc.assert(
      fc.property(someFacts, aRow, someWeights, (facts, row, weights) => {
        const cellOf = ({ deviceId }: { deviceId: Parameters<typeof fitCell>[1] }): Cell | undefined =>
          row && fitCell(row, deviceId);
        const totals = new Int32Array(candidates.length);
        scoreAll(facts, cellOf, weights, totals);
        for (const candidate of candidates) {
          const { tenths, parts, preference } = score(candidate, facts, cellOf(candidate), weights);
          expect(parts.map((one) => one.part)).toEqual(scoreParts);
          const more = preference?.tenths ?? 0;
          expect(parts.reduce((sum, one) => sum + one.tenths, more)).toBe(tenths);
          // Each of seven parts is rounded by at most half a tenth.
          expect(tenths).toBeGreaterThanOrEqual(0);
          expect(tenths - more).toBeLessThanOrEqual(1003);
          expect(more).toBeLessThanOrEqual(mostPreferencePoints * 10);
          expect(totals[candidate.index], candidate.id).toBe(tenths);
        }
      }),
      { numRuns: 200, seed: 11 },
    );
  }, 120_000);
});

describe('two codes together', () => {
  const pairs: readonly CodeBasis[] = [
    { ibc: 2018, nfpa101: 2018, nec: 2017, nfpa72: 2016 },
    { ibc: 2021, nfpa101: 2021, nec: 2020, nfpa72: 2019 },
    { ibc: 2024, nfpa101: 2024, nec: 2023, nfpa72: 2022 },
    { ibc: 2018, nfpa101: 2024, nec: 2020, nfpa72: 2019 },
  ];
  const judged = (facts: FactValues, basis: CodeBasis) =>
    judge(ruleBookFor(basis, []), slotsFrom(facts, basis));

  // A clause may say “NFPA 101 alone”; then another clause has to stand in for it where both are adopted.
  test('forbid whatever one of them forbids, or leave it in doubt', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(...pairs), ({ facts }, both) => {
        const together = judged(facts, both);
        for (const alone of [
          { ...both, nfpa101: null },
          { ...both, ibc: null },
        ]) {
          for (const { rule, clause, speaksOf } of judged(facts, alone).sure) {
            const id = `${rule.id}${clause.key ?? ''}`;
            const freed = candidates.filter(
              ({ index }) =>
                has(speaksOf, index) && !has(together.rejected, index) && !has(together.doubted, index),
            );
            expect(
              freed.map((one) => one.id),
              `${id} forbids it under ${basisKey(alone)}, and nothing under both`,
            ).toEqual([]);
          }
        }
      }),
      { numRuns: 800, seed: 12 },
    );
  }, 120_000);
});

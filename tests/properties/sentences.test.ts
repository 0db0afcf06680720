// Every sentence a person can read here, walked for words that clear a door, prefer what a rule forbids, or cite twice.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allFindings } from '../../src/domain/building/alongTheWay.ts';
import { assessBuilding } from '../../src/domain/building/building.ts';
import { pathFindings } from '../../src/domain/building/paths.ts';
import { spaceEgress } from '../../src/domain/building/spaceEgress.ts';
import { type CodeBasis, ibcEditions, nfpa101Editions } from '../../src/domain/codes/basis.ts';
import { citeInWords, sections } from '../../src/domain/codes/sections.ts';
import { decideInBuilding } from '../../src/domain/building/joined.ts';
import { reportOf } from '../../src/domain/words/report.ts';
import { gradeWords } from '../../src/domain/words/signOff.ts';
import { stateWords } from '../../src/domain/words/states.ts';
import { candidates, releases } from '../../src/domain/devices/candidates.ts';
import { devices } from '../../src/domain/devices/devices.ts';
import { items } from '../../src/domain/devices/items.ts';
import { fitNotes } from '../../src/domain/fit/notes.ts';
import { answerWords } from '../../src/domain/manual/answers.ts';
import { glossary, notDecided } from '../../src/domain/manual/glossary.ts';
import { factKeys, fieldInfo } from '../../src/domain/model/fields.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import { conditions } from '../../src/domain/simulate/conditions.ts';
import { findingWords } from '../../src/domain/simulate/sentences.ts';
import { simulateOpening } from '../../src/domain/decide/whatHappens.ts';
import { buildingLines } from '../../src/exporting/sheets/buildingLines.ts';
import { diagramSheet } from '../../src/exporting/sheets/diagramSheet.ts';
import { scheduleSheet } from '../../src/exporting/sheets/doorSchedule.ts';
import { findingsSheet } from '../../src/exporting/sheets/findingsSheet.ts';
import { loadsSheet } from '../../src/exporting/sheets/loadsSheet.ts';
import { openingSheet } from '../../src/exporting/sheets/openingSheet.ts';
import { draftOf } from '../../src/exporting/sheets/stamp.ts';
import { registerInWords, reviewRegister } from '../../src/exporting/sheets/reviewRegister.ts';
import { sequencePages } from '../../src/exporting/sheets/sequencePages.ts';
import { setSheet } from '../../src/exporting/sheets/setSheet.ts';
import { testPages } from '../../src/exporting/sheets/testPages.ts';
import { decisionRecord } from '../../src/exporting/jsonl/record.ts';
import { scheduleRows } from '../../src/domain/schedules/openings.ts';
import { setNumbersOf } from '../../src/domain/sets/sets.ts';
import { runs } from './effort.ts';
import { demo, demoOpenings, onPaper, type OnPaper, paperOf, withCandidate } from './paperOpenings.ts';
import { aSurvey } from './surveys.ts';

/** Kinds of sentence that are not printed here, each with the reason in a word. */
const banned: Readonly<Record<string, RegExp>> = {
  'lawfulness is the authority’s word': /\b(un)?lawful(ly)?\b|\b(il)?legal(ly)?\b/i,
  'claims compliance':
    /\bcompliant\b|(?<!not a determination of code )\bcompliance\b|\bcompl(ies|y) with\b|\bmeets (the|all) codes?\b|\bup to code\b/i,
  'clears a door': /\bno opening needs\b|\bno (sign-off|review|name) is needed\b|\bnothing unknown\b/i,
  'speaks for all codes':
    /\bno (rule|code) (here )?(asks|requires|needs)\b|\bno [\w-]+ connection is (needed|required)\b/i,
  'prefers what is forbidden': /\bwould have led\b|\bbut for [A-Z]-\d/i,
  'states as a fact what the table must say': /\bleaving stays free\b/i,
  // Sixteenths of an inch are measured so and not rounded: beside a limit the rounding would say the opposite.
  'stray digits':
    /(?<![\d.A-Z])\d+\.(?!(?:0625|125|1875|3125|375|4375|5625|625|6875|8125|875|9375)\b)\d{3,}(?![\d]*\.\d)/,
};
/** In a citation a number or name stands once. */
const badCite = /\b([A-Z]?\d+) \1\b|\bnone\b|undefined|null/;

function* texts(value: unknown, at = ''): Generator<readonly [string, string]> {
  if (typeof value === 'string') yield [at, value];
  else if (typeof value === 'function') return;
  else if (Array.isArray(value))
    for (const [index, one] of value.entries()) yield* texts(one, `${at}[${index}]`);
  else if (value instanceof Map || value instanceof Set) return;
  else if (typeof value === 'object' && value !== null) {
    for (const [key, one] of Object.entries(value)) yield* texts(one, `${at}.${key}`);
  }
}

function wrongIn(value: unknown, at: string): string[] {
  const wrong: string[] = [];
  for (const [where, text] of texts(value, at)) {
    for (const [kind, pattern] of Object.entries(banned)) {
      if (pattern.test(text)) wrong.push(`${kind}: ${where}: ${text.slice(0, 160)}`);
    }
  }
  return wrong;
}
const once = (list: readonly string[]) => [...new Set(list)];

const bases: readonly CodeBasis[] = [
  ...ibcEditions.map((ibc): CodeBasis => ({ ibc, nfpa101: null, nec: 2020, nfpa72: 2019 })),
  ...nfpa101Editions.map((nfpa101): CodeBasis => ({ ibc: null, nfpa101, nec: 2023, nfpa72: 2022 })),
];

/** All that is printed of one opening. */
function ofOpening({ project, opening, decision }: OnPaper): unknown {
  const decisions = new Map([[opening.id, decision]]);
  const [row] = scheduleRows(project, decisions);
  const simulated = simulateOpening(project, opening, decision);
  return {
    report: reportOf(decision),
    sheet: row && openingSheet(project, opening, row, decision, reportOf(decision), draftOf('2026-01-01')),
    simulated: simulated && { outcomes: simulated.outcomes, findings: simulated.findings },
    sequence: sequencePages(project, decisions),
    test: testPages(project, decisions, [opening], draftOf('2026-01-01')),
    set: setSheet(project, decisions),
    register: reviewRegister(project, decisions).map(
      ({ opening: _o, decision: _d, status: _s, ...words }) => words,
    ),
  };
}

describe('no sentence clears a door or says a thing twice', () => {
  test('in rules, words, items, questions and the manual', () => {
    const wrong = [
      ...allRules.flatMap(({ id, title, note, why, clauses, cites }) =>
        wrongIn(
          { title, note, why, says: clauses.map((one) => one.says), cites: cites.map((one) => one.what) },
          id,
        ),
      ),
      ...wrongIn({ stateWords, gradeWords, releases, devices, items, fitNotes }, 'words'),
      ...wrongIn({ glossary, notDecided, answerWords, conditions }, 'manual'),
      ...wrongIn(Object.fromEntries(factKeys.map((key) => [key, fieldInfo(key)])), 'field'),
      ...wrongIn(
        Object.fromEntries(
          Object.entries(findingWords).map(([key, one]) => [
            key,
            typeof one === 'function' ? (one as (...a: unknown[]) => string)([], 4, true) : one,
          ]),
        ),
        'finding',
      ),
      ...wrongIn({ empty: registerInWords([], 0), one: registerInWords([], 2) }, 'register'),
    ];
    expect(wrong).toEqual([]);
  });

  test('in no citation under any edition', () => {
    const cites = [
      ...allRules.flatMap((rule) => rule.cites.map((cite) => [rule.id, cite] as const)),
      ...Object.entries(sections),
    ];
    const wrong = cites.flatMap(([id, cite]) =>
      bases
        .map((basis) => citeInWords(cite, basis))
        .flatMap((said) => (badCite.test(said) ? [`${id}: ${said}`] : [])),
    );
    expect(once(wrong)).toEqual([]);
  });

  test('on no sheet of the demo building', () => {
    const decisions = decideInBuilding(demo);
    const building = assessBuilding(demo, decisions);
    const paths = pathFindings(demo, decisions);
    const spaces = spaceEgress(building);
    const entries = reviewRegister(demo, decisions);
    const numbers = setNumbersOf(demo, decisions);
    const whole = {
      schedule: scheduleSheet(demo, decisions),
      sets: setSheet(demo, decisions),
      sequence: sequencePages(demo, decisions),
      tests: testPages(demo, decisions, demoOpenings, draftOf('2026-01-01')),
      diagrams: diagramSheet(demo, decisions, demoOpenings).entries.map(
        ({ drawings: _d, ...words }) => words,
      ),
      register: [registerInWords(entries, 1), buildingLines(demo, paths)],
      findings: findingsSheet(demo, allFindings(building, paths, spaces)),
      loads: loadsSheet(demo, spaces),
      records: demoOpenings.flatMap((opening) => {
        const decision = decisions.get(opening.id);
        return decision ? [decisionRecord(demo, opening, decision, numbers, [])] : [];
      }),
    };
    const each = demoOpenings.flatMap((opening) => wrongIn(ofOpening(onPaper(demo, opening)), opening.mark));
    expect(once([...wrongIn(whole, 'sheets'), ...each])).toEqual([]);
  }, 120_000);

  test('nor of openings made up, whatever stands there', () => {
    fc.assert(
      fc.property(aSurvey, fc.constantFrom(undefined, ...candidates), (survey, candidate) => {
        expect(wrongIn(ofOpening(paperOf(survey, candidate?.id)), 'made up')).toEqual([]);
      }),
      { numRuns: runs(50, 400), seed: 20261130 },
    );
  }, 120_000);

  test('and the walk reads what it says it reads', () => {
    const text = 'No rule asks for it; it is lawful, and 3.14159 in.';
    expect(wrongIn({ deep: [{ says: text }] }, 'x').length).toBe(3);
    expect(badCite.test('OSHA 29 CFR 1910 1910.36(d)')).toBe(true);
    expect(withCandidate(demoOpenings[0] as never, 'magnet/safe/sensor').override).not.toBeNull();
  });
});

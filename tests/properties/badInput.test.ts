import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdits, commandProblemInWords } from '../../src/domain/commands/command.ts';
import { decide, decideAll } from '../../src/domain/decide/decide.ts';
import { reportOf } from '../../src/domain/words/report.ts';
import { stateWords } from '../../src/domain/words/states.ts';
import { known } from '../../src/domain/testing/facts.ts';
import { type FactKey, factKeys, fieldInfo } from '../../src/domain/model/fields.ts';
import { newOpening, newProject } from '../../src/domain/model/newProject.ts';
import type { Amendment, Opening, Project } from '../../src/domain/model/project.ts';
import { allRules } from '../../src/domain/rules/all.ts';
import { saveProjectText, openProjectText } from '../../src/domain/versions/file.ts';
import { badOpenings } from './badOpenings.ts';

type Value = string | number | boolean;

/** A project with one opening, each fact entered through the same edit as on the screen. */
function entered(facts: Readonly<Record<string, Value>>, amendments: readonly Amendment[] = []) {
  const start: Project = { ...newProject('p', 'P'), amendments, openings: { o: newOpening('o', '101') } };
  return applyEdits(
    start,
    Object.entries(facts).map(([fact, value]) => {
      const building = fieldInfo(fact as FactKey).scope === 'building';
      return building
        ? { kind: 'setBuildingFact' as const, fact, value: known(value) }
        : { kind: 'setFact' as const, id: 'o', fact, value: known(value) };
    }),
  );
}

function reported(project: Project) {
  const opening = project.openings['o'] as Opening;
  const decision = decide(project, opening);
  return { decision, report: reportOf(decision) };
}

describe('an opening that contradicts itself', () => {
  test('is tried in at least forty ways, refused in some and warned of in others', () => {
    expect(badOpenings.length).toBeGreaterThanOrEqual(40);
    expect(new Set(badOpenings.map(([, , , severity]) => severity)).size).toBe(2);
  });

  test.each(badOpenings)('%s', (_name, facts, field, severity, sentence) => {
    const applied = entered(facts);
    if (!applied.ok) throw new Error(commandProblemInWords(applied.problem));
    const { decision, report } = reported(applied.project);
    const found = report.findings.find((finding) => finding.sentence === sentence);
    const seen = report.findings.map((finding) => finding.sentence);
    expect(found, seen.join('\n')).toMatchObject({
      field,
      fieldLabel: fieldInfo(field).label,
      refuses: severity === 'refuse',
    });
    // What lives depend on stops the answer; nothing is recommended beside it.
    if (severity === 'refuse') {
      expect(decision.state).toBe('refused');
      expect(decision.chosen).toBeNull();
      expect(report.headline).toBe('The survey contradicts itself on a life-safety point; correct it first.');
    }
  });
});

describe('a value that cannot be', () => {
  const wrong: readonly [FactKey, unknown, string][] = [
    ['occupantLoad', -1, 'Occupant load served cannot be below 0 people.'],
    ['occupantLoad', 10.5, 'Occupant load served must be a whole number.'],
    ['fireRatingMin', 75.5, 'Fire rating of the door must be a whole number.'],
    ['fireRatingMin', -20, 'Fire rating of the door cannot be below 0 min.'],
    ['leafWidthIn', 0, 'Leaf width cannot be below 12 in.'],
    ['leafWidthIn', 914, 'Leaf width cannot be above 240 in; check the unit.'],
    ['leafThicknessIn', 44, 'Leaf thickness cannot be above 6 in; check the unit.'],
    ['leafHeightIn', Number.NaN, 'Leaf height must be a number.'],
    ['leafHeightIn', Number.POSITIVE_INFINITY, 'Leaf height must be a number.'],
    ['leafHeightIn', Number.NEGATIVE_INFINITY, 'Leaf height must be a number.'],
    ['occupantLoad', '50', 'Occupant load served must be a number.'],
    ['doorType', 'portcullis', 'Door type must be one of the answers offered.'],
    ['doorType', '', 'Door type must be one of the answers offered.'],
    ['doorType', 'constructor', 'Door type must be one of the answers offered.'],
    ['doorType', 3, 'Door type must be one of the answers offered.'],
    ['panicPresent', 'yes', 'Panic hardware present is answered by yes or no.'],
    ['panicPresent', 1, 'Panic hardware present is answered by yes or no.'],
  ];
  test.each(wrong)('%s = %j', (key, value, sentence) => {
    const applied = entered({ [key]: value as Value });
    expect(applied.ok).toBe(false);
    if (applied.ok) return;
    expect(commandProblemInWords(applied.problem)).toBe(sentence);
    expect(applied.problem).toMatchObject({ field: key });
  });

  test('a fact that nobody knows is named', () => {
    const applied = applyEdits({ ...newProject('p', 'P'), openings: { o: newOpening('o', '1') } }, [
      { kind: 'setFact', id: 'o', fact: 'constructor', value: known('x') },
    ]);
    expect(applied.ok ? '' : commandProblemInWords(applied.problem)).toBe(
      'This version knows no fact called constructor.',
    );
  });

  test('in a file is set aside with its sentence, and the rest of the opening is decided', () => {
    const applied = entered({ doorType: 'single', occupantLoad: 10 });
    if (!applied.ok) throw new Error('A plain opening was refused.');
    const text = saveProjectText(applied.project).replace('"value": 10', '"value": -10');
    const opened = openProjectText(text);
    if (!opened.ok) throw new Error('The file was not opened.');
    expect(opened.setAside.map(({ where, says }) => `${where}: ${says}`)).toEqual([
      'Opening 101, occupantLoad: occupantLoad.value: Occupant load served cannot be below 0 people.',
    ]);
    expect(reported(opened.project).decision.state).toBe('open');
  });
});

describe('little or nothing', () => {
  test('an empty project has no decisions and an opening of which nothing is known stays open', () => {
    expect(decideAll(newProject('p', 'P')).size).toBe(0);
    const applied = entered({});
    if (!applied.ok) throw new Error('An empty opening was refused.');
    const { decision, report } = reported(applied.project);
    expect(decision.state).toBe('open');
    expect(report.state.means).toBe(stateWords.open.means);
    expect(report.findings).toEqual([]);
  });

  test('no code chosen at all is decided too, and never settles a lock on a way out without a release', () => {
    const bare = { ibc: null, nfpa101: null, nec: null, nfpa72: null } as const;
    const project = { ...newProject('p', 'P'), basis: bare, openings: { o: newOpening('o', '1') } };
    expect(['none', 'alarmOnly', 'buttonOnly', 'credentialOut']).not.toContain(
      reported(project).decision.chosen?.candidate.release,
    );
  });

  test('a choice by hand that this version does not know is passed over', () => {
    const opening: Opening = {
      ...newOpening('o', '1'),
      override: { candidate: 'laser/safe/none', reason: 'r', by: 'b', at: '2026-01-01T00:00:00Z' },
    };
    const { decision } = reported({ ...newProject('p', 'P'), openings: { o: opening } });
    expect(decision.overridden).toBeNull();
  });
});

describe('a local amendment', () => {
  const amendment: Amendment = {
    id: 'm',
    says: 'No magnets in {this} town.',
    source: 'Ordinance 7',
    effect: 'prohibit',
    when: {},
    devices: ['magnet'],
    releases: [],
    failModes: [],
  };
  const office = { egressRole: 'exitAccess', roomUse: 'office' } as const;
  const about = (change: Partial<Amendment>) => {
    const applied = entered(office, [{ ...amendment, ...change }]);
    if (!applied.ok) throw new Error('The opening was refused.');
    return reported(applied.project);
  };
  const local = (signOffs: readonly { ruleId: string | undefined; sentence: string; grade: string }[]) =>
    signOffs.filter((one) => one.ruleId === 'LOCAL-m').map((one) => `${one.grade}: ${one.sentence}`);

  test('that can be read forbids what it names, in the user’s own words, braces and all', () => {
    const { report } = about({});
    const magnet = report.rejected.find((one) => one.deviceId === 'magnet');
    const because = magnet?.variants.flatMap((one) => one.because.map((step) => step.sentence));
    expect(because).toContain('No magnets in {this} town.');
    expect(local(report.signOffs)).toEqual([]);
  });

  test.each([
    ['a fact', { when: { moonPhase: 'full' } }, '“moonPhase = full”'],
    ['an answer', { when: { roomUse: 'spaceship' } }, '“roomUse = spaceship”'],
    ['an answer of another kind', { when: { roomUse: 3 } }, '“roomUse = 3”'],
    ['a device', { devices: ['laser'] }, '“laser”'],
    ['a release', { releases: ['telepathy'] }, '“telepathy”'],
    ['a fail mode', { failModes: ['failSafe'] }, '“failSafe”'],
  ] as const)('that names %s this version does not know goes to a reviewer', (_what, change, words) => {
    const { report } = about(change as Partial<Amendment>);
    expect(local(report.signOffs)).toEqual([
      `must: A local amendment cannot be applied, because this version does not know ${words}; a reviewer decides what it asks here: “No magnets in {this} town.”.`,
    ]);
  });

  test('that cannot be read is raised only where the part that can be read applies', () => {
    const { report } = about({ when: { moonPhase: 'full', roomUse: 'classroom' } });
    expect(local(report.signOffs)).toEqual([]);
  });

  test('of any words never breaks a decision', () => {
    const word = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom('__proto__', 'constructor', 'roomUse'),
    );
    fc.assert(
      fc.property(
        fc.record({
          says: fc.string({ minLength: 1 }),
          effect: fc.constantFrom('prohibit' as const, 'require' as const, 'signOff' as const),
          when: fc.dictionary(
            fc.oneof(word, fc.constantFrom(...factKeys)),
            fc.oneof(word, fc.boolean(), fc.double()),
          ),
          devices: fc.array(word, { maxLength: 2 }),
          releases: fc.array(word, { maxLength: 2 }),
          failModes: fc.array(word, { maxLength: 2 }),
        }),
        (change) => {
          const { report } = about(change);
          expect(report.headline).not.toBe('');
        },
      ),
      { numRuns: 40, seed: 14 },
    );
  });
});

test('every name in braces in a rule is a fact, so no sentence shows a brace', () => {
  const names = allRules.flatMap((rule) =>
    rule.clauses.flatMap(({ says }) =>
      [...says.matchAll(/\{(\w*)\}/g)].map((found) => `${rule.id} ${found[1]}`),
    ),
  );
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name) => !(factKeys as readonly string[]).includes(name.split(' ')[1] ?? ''))).toEqual(
    [],
  );
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdits } from '../commands/command.ts';
import { decide } from '../decide/decide.ts';
import { citesInWords } from '../words/steps.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Amendment, Project } from '../model/project.ts';
import { aProject } from '../testing/arbitraries.ts';
import { openingLike } from '../survey/takeOver.ts';
import { standardTemplates } from '../survey/standardTemplates.ts';
import { known } from '../testing/facts.ts';
import { mappingsOf, readTemplates } from './standardHelp.ts';
import {
  followEdits,
  followInWords,
  readStandard,
  type StandardFile,
  standardOf,
  standardText,
} from './standardFile.ts';

const noMagnets: Amendment = {
  id: 'm1',
  says: 'No magnets: the owner had three fail.',
  source: 'Facilities memo of March 2',
  effect: 'prohibit',
  when: {},
  devices: ['magnet', 'shearMagnet'],
  releases: [],
  failModes: [],
};
const house: Project = { ...newProject('p', 'House'), amendments: [noMagnets] };
const first = standardOf(house, { id: 's', name: 'Standard of the school district', edition: '1' });
const follow = (project: Project, file: StandardFile): Project => {
  const applied = applyEdits(project, followEdits(project, file));
  if (!applied.ok) throw new Error(applied.problem.kind);
  return applied.project;
};
const other = newProject('q', 'Another house');

describe('an owner’s standard', () => {
  it('comes back from its file as it went', () => {
    fc.assert(
      fc.property(aProject, (project) => {
        const file = standardOf(project, { id: 's', name: 'A', edition: '1' });
        const read = readStandard(standardText(file));
        expect(read).toEqual({ ok: true, file: JSON.parse(JSON.stringify(file)) });
      }),
      { numRuns: 50 },
    );
  });

  it('decides at a door under its own name and edition', () => {
    const opening = { ...newOpening('a', '101'), facts: { doorType: known('single' as const) } };
    const there = follow({ ...other, openings: { a: opening } }, first);
    const decision = decide(there, opening);
    const because = decision.rejected
      .flatMap((one) => one.because)
      .find(({ rule }) => rule.id === 'LOCAL-m1');
    expect(because?.rule.title).toBe('Owner’s standard');
    expect(because && citesInWords(because, there.basis).join()).toContain(
      'Standard of the school district, edition 1',
    );
  });

  it('says what it would do before it does it, and a newer edition takes away what it no longer asks', () => {
    expect(followInWords(other, first).join(' ')).toContain('1 rule added.');
    const there = follow(other, first);
    const mine: Amendment = { ...noMagnets, id: 'own', source: 'City' };
    const both = { ...there, amendments: [...there.amendments, mine] };
    const second: StandardFile = { ...first, edition: '2', amendments: [] };
    expect(followInWords(both, second)).toEqual([
      'The project follows edition 1 of “Standard of the school district”. Edition 2 would take its place.',
      '1 rule removed.',
    ]);
    const after = follow(both, second);
    expect(after.amendments).toEqual([mine]);
    expect(after.standards['s']?.edition).toBe('2');
    expect(followInWords(after, second)).toContain('Nothing else in the project would change.');
  });

  it('brings preferred devices under its name, and takes back only its own', () => {
    const preferred = { mortiseLock: { points: 5, says: 'Stocked.' } };
    const mine = { says: 'Asked for by the tenant.', points: 2 };
    const one: StandardFile = { ...first, weights: { ...house.weights, preferred } };
    const here = { ...other, weights: { ...other.weights, preferred: { strikeMortise: mine } } };
    expect(followInWords(here, one)).toContain('1 preferred device added.');
    const there = follow(here, one);
    expect(there.weights.preferred).toEqual({
      strikeMortise: mine,
      mortiseLock: { points: 5, says: 'Stocked.', standard: 'Standard of the school district, edition 1' },
    });
    // Made into a standard again, a preference stands without the name of the one it came from.
    expect(standardOf(there, first).weights?.preferred).toEqual({ strikeMortise: mine, ...preferred });
    const second: StandardFile = { ...one, edition: '2', weights: null };
    expect(followInWords(there, second)).toContain('1 preferred device removed.');
    expect(follow(there, second).weights.preferred).toEqual({ strikeMortise: mine });
  });

  it('brings templates and mappings, and says what of them an update changes', () => {
    const templates = { t: { name: 'Office', facts: { doorType: known('single' as const) } } };
    const one: StandardFile = { ...first, templates, columns: { tür: 'mark' }, words: { 'rating b': '60' } };
    expect(followInWords(other, one)).toEqual(
      expect.arrayContaining(['1 template added.', '2 mappings added.']),
    );
    const there = follow(other, one);
    expect(mappingsOf(there)).toEqual({ columns: { tür: 'mark' }, words: { 'rating b': '60' } });
    const [template] = standardTemplates(there);
    expect(template?.mark).toBe('Office (Standard of the school district, edition 1)');
    expect(template && openingLike('n', '1', template).facts.doorType).toEqual({
      is: 'assumed',
      value: 'single',
      from: 'same as Office (Standard of the school district, edition 1)',
    });
    const second: StandardFile = { ...one, edition: '2', templates: {}, words: { 'rating b': '90' } };
    expect(followInWords(there, second)).toEqual(
      expect.arrayContaining(['1 template removed.', '1 mapping changed.']),
    );
  });

  it('takes openings along as templates by mark, without who saw them and when', () => {
    const seen = { ...known('single' as const), at: '2026-01-01T00:00:00Z', by: 'Kim' };
    const opening = {
      ...newOpening('a', '101'),
      facts: { doorType: seen, latch: { is: 'unknown' as const } },
    };
    const project = { ...other, openings: { a: opening } };
    expect(readTemplates(project, ' 101: Office on a corridor \n')).toEqual({
      ok: true,
      templates: { a: { name: 'Office on a corridor', facts: { doorType: known('single') } } },
    });
    expect(readTemplates(project, '102')).toEqual({
      ok: false,
      says: 'There is no opening 102 to take as a template.',
    });
  });

  it('of format 1 is read as it is', () => {
    expect(readStandard(standardText({ ...first, version: 1 })).ok).toBe(true);
  });

  it('is followed in one step that undo takes back whole', () => {
    fc.assert(
      fc.property(aProject, aProject, (from, to) => {
        const file = standardOf(from, { id: 's', name: 'A', edition: '1' });
        const applied = applyEdits(to, followEdits(to, file));
        if (!applied.ok) throw new Error(applied.problem.kind);
        const back = applyEdits(applied.project, applied.inverse, true);
        expect(back.ok && back.project).toEqual(to);
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['no JSON', 'mark,door', /not JSON/],
    ['another kind of file', '{"format":"latchward-project"}', /another kind/],
    ['null', 'null', /another kind/],
    ['a newer format', '{"format":"latchward-standard","version":9}', /newer Latchward/],
    [
      'a torn rule',
      standardText(first).replace('"prohibit"', '"forbid"'),
      /damaged at “amendments, 0, effect”/,
    ],
  ])('%s is refused with a sentence', (_what, text, says) => {
    const read = readStandard(text);
    expect(read.ok ? '' : read.says).toMatch(says);
  });
});

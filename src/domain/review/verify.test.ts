import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingerprint } from '../model/fingerprint.ts';
import { newProject } from '../model/newProject.ts';
import type { Project } from '../model/project.ts';
import { inSequence, type Verdict } from '../model/verdict.ts';
import { verdictOn } from '../testing/verdicts.ts';
import { openProjectText, saveProjectText } from '../versions/file.ts';
import { headOf, rootText, sealedText } from './log.ts';
import { logInWords } from './proves.ts';
import { checkLog, textsToHash } from './verify.ts';

/** Any hash does: the real ones are made outside of the domain. */
const hash = fingerprint;

function appended(project: Project, other: Partial<Verdict> = {}): Project {
  const entry = verdictOn(project, [], {
    reason: `Entry ${Object.keys(project.verdicts).length + 1} of the log.`,
    previousHash: headOf(project.verdicts)?.hash ?? hash(rootText(project.verdicts)),
    ...other,
  });
  const sealed = { ...entry, hash: hash(sealedText(entry)) };
  return {
    ...project,
    verdicts: { ...project.verdicts, [sealed.id]: sealed },
    verdictIndex: { ...project.verdictIndex, [sealed.id]: sealed.hash },
  };
}
const logOf = (length: number, start: Project = newProject('p', 'Project')) =>
  Array.from({ length }).reduce((project: Project) => appended(project), start);

function check(project: Project, signatures: ReadonlyMap<string, boolean> = new Map()) {
  const hashes = new Map([...textsToHash(project)].map(([id, text]) => [id, hash(text)]));
  return checkLog(project, { hashes, root: hash(rootText(project.verdicts)), signatures });
}
const problemsOf = (project: Project) => logInWords(check(project)).problems.join(' ');
const changed = (project: Project, id: string, change: Partial<Verdict>): Project => ({
  ...project,
  verdicts: { ...project.verdicts, [id]: { ...(project.verdicts[id] as Verdict), ...change } },
});

describe('a log of verdicts', () => {
  const log = logOf(4);

  it('is whole as it was written, also after it went through a file', () => {
    expect(check(log)).toMatchObject({ whole: true, says: [] });
    const opened = openProjectText(saveProjectText(log));
    if (!opened.ok) throw new Error(opened.problem.kind);
    expect(check(opened.project).whole).toBe(true);
  });

  it('names an entry that was edited, with or without a new hash', () => {
    expect(problemsOf(changed(log, 'v2', { reason: 'Another reason.' }))).toContain(
      'Entry 2 (Approved by J. Reviewer, 2026-03-02) was changed after it was written',
    );
    const forged = { ...(log.verdicts['v2'] as Verdict), reason: 'Another reason.' };
    const rehashed = changed(log, 'v2', { ...forged, hash: hash(sealedText(forged)) });
    expect(problemsOf(rehashed)).toContain('Entry 3 (Approved by J. Reviewer, 2026-03-02) leans on an entry');
    expect(problemsOf(rehashed)).toContain('another hash than the index');
  });

  it('names an entry that was cut out, the last one as well', () => {
    for (const id of ['v1', 'v2', 'v4']) {
      const { [id]: _gone, ...verdicts } = log.verdicts;
      expect(problemsOf({ ...log, verdicts })).toContain(`An entry is missing: ${id}`);
    }
    const { v2: _entry, ...verdicts } = log.verdicts;
    const { v2: _name, ...verdictIndex } = log.verdictIndex;
    expect(problemsOf({ ...log, verdicts, verdictIndex })).toContain('number 2');
  });

  it('names entries whose order was changed', () => {
    const swapped = changed(changed(log, 'v2', { sequence: 3 }), 'v3', { sequence: 2 });
    expect(problemsOf(swapped)).toContain('their order was changed');
  });

  it('names an entry that was put in by hand, and two written on two devices', () => {
    const own = { ...log.verdictIndex };
    expect(problemsOf({ ...appended(log), verdictIndex: own })).toContain('put in by other means');
    const other = verdictOn(log, [], { id: 'w', sequence: 4, previousHash: log.verdicts['v3']?.hash ?? '' });
    const sealed = { ...other, hash: hash(sealedText(other)) };
    const merged = {
      ...log,
      verdicts: { ...log.verdicts, w: sealed },
      verdictIndex: { ...log.verdictIndex, w: sealed.hash },
    };
    expect(problemsOf(merged)).toContain('written on two devices');
    expect(check(merged).entries.every(({ seal }) => seal === 'whole')).toBe(true);
  });

  it('holds entries of an older file together with the first sealed one', () => {
    const old = verdictOn(newProject('p', 'Project'), [], { id: 'review-a', at: null, hash: '' });
    const start = {
      ...newProject('p', 'Project'),
      verdicts: { 'review-a': old },
      verdictIndex: { 'review-a': '' },
    };
    const two = logOf(2, start);
    expect(check(two).whole).toBe(true);
    expect(check(two).entries[0]?.seal).toBe('unsealed');
    expect(problemsOf(changed(two, 'review-a', { by: 'Somebody else' }))).toContain(
      'entries of an older file',
    );
    expect(problemsOf(changed(log, 'v4', { hash: '' }))).toContain('carries no hash');
  });

  it('finds a signature that does not fit, and one name with two keys', () => {
    const key = { algorithm: 'ECDSA P-256' as const, publicKey: {}, print: 'one' };
    const signed = changed(log, 'v3', { key, signature: 'x' });
    expect(check(signed, new Map([['v3', true]])).whole).toBe(true);
    expect(logInWords(check(signed, new Map([['v3', true]]))).says).toContain('1 signed with a key');
    expect(problemsOf(signed)).toContain('the signature does not fit');
    const twice = changed(signed, 'v4', { key: { ...key, print: 'two' }, signature: 'y' });
    const both = check(
      twice,
      new Map([
        ['v3', true],
        ['v4', true],
      ]),
    );
    expect(both.says).toEqual(['J. Reviewer signed with 2 different keys. Ask which of them are theirs.']);
  });

  it('whatever one field of one entry is changed to, it is found', () => {
    const fields = ['by', 'role', 'firm', 'license', 'reference', 'reason', 'previousHash', 'hash'] as const;
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.keys(log.verdicts)),
        fc.constantFrom(...fields),
        fc.string(),
        (id, field, text) => {
          fc.pre(log.verdicts[id]?.[field] !== text);
          expect(check(changed(log, id, { [field]: text })).whole).toBe(false);
        },
      ),
      { numRuns: 200 },
    );
    expect(inSequence(log.verdicts).map(({ sequence }) => sequence)).toEqual([1, 2, 3, 4]);
  });
});

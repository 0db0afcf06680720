// Verdicts with real hashes and keys, through the project file, and what is done to such a file.
import { beforeAll, describe, expect, it } from 'vitest';
import { decide } from '../domain/decide/decide.ts';
import { newOpening, newProject } from '../domain/model/newProject.ts';
import type { Project } from '../domain/model/project.ts';
import type { Verdict } from '../domain/model/verdict.ts';
import { emptyDraft, verdictWarnings } from '../domain/review/draft.ts';
import { logInWords } from '../domain/review/proves.ts';
import { openProjectText, saveProjectText } from '../domain/versions/file.ts';
import { makeKeyFile, openKeyFile } from './keyFile.ts';
import { createAppStore } from './store.ts';
import { checkLogOf, createVerdictDesk, type Signer } from './verdictDesk.ts';

const opening = newOpening('a', '101');
const start: Project = { ...newProject('p', 'House'), openings: { a: opening } };
const now = '2026-03-02T09:00:00.000Z';
const day = { today: '2026-03-02', dayOf: (instant: string) => instant.slice(0, 10) };

let count = 0;
const newId = () => `id${(count += 1)}`;
let signer: Signer;
let log: Project;
let ids: readonly string[];

beforeAll(async () => {
  const passphrase = 'twelve small words';
  signer = (await openKeyFile(await makeKeyFile(passphrase), passphrase)) as Signer;
  const store = createAppStore({ project: start, clock: () => now, ids: newId, by: () => 'A' });
  const desk = createVerdictDesk({ store, clock: () => now, newId });
  for (const by of ['J. Reviewer', 'K. Reviewer', 'L. Reviewer']) {
    const draft = {
      ...emptyDraft,
      verdict: 'refused',
      by,
      role: 'Plan reviewer',
      on: day.today,
      reason: 'The only door of the room.',
    } as const;
    const targets = [{ opening, decision: decide(start, opening) }];
    const written = await desk.write(draft, { targets, questions: [], ...day }, signer);
    if (!written.ok) throw new Error(written.says);
  }
  log = store.getState().document.project;
  ids = Object.values(log.verdicts)
    .toSorted((a, b) => a.sequence - b.sequence)
    .map(({ id }) => id);
});

const entry = (at: number) => log.verdicts[ids[at] as string] as Verdict;
const without = (table: Readonly<Record<string, unknown>>, id: string) =>
  Object.fromEntries(Object.entries(table).filter(([key]) => key !== id));

/** Through a file and opened again: what is said of the log, and how many of its entries are there. */
async function opened(change: Partial<Project>) {
  const result = openProjectText(saveProjectText({ ...log, ...change }));
  if (!result.ok) throw new Error(result.problem.kind);
  const { problems, notes } = logInWords(await checkLogOf(result.project));
  return {
    problems: problems.join(' '),
    notes: notes.join(' '),
    entries: Object.keys(result.project.verdicts).length,
  };
}
const withEntry = (at: number, change: Partial<Verdict>) => ({
  verdicts: { ...log.verdicts, [ids[at] as string]: { ...entry(at), ...change } },
});

describe('a project file with a log of verdicts', () => {
  it('is checked on another device from the file alone', async () => {
    expect(await opened({})).toEqual({ problems: '', notes: '', entries: 3 });
  });

  it('forged: the entry is named, its signature too, and nothing is lost', async () => {
    const found = await opened(withEntry(1, { reason: 'It may stay as it is.' }));
    expect(found.problems).toContain('Entry 2 (Refused by K. Reviewer, 2026-03-02) was changed');
    expect(found.entries).toBe(3);
  });

  it('cut: the gap is named from the index, and from the entry after it where the index was cut as well', async () => {
    const id = ids[1] as string;
    const cut = { verdicts: without(log.verdicts, id) as Project['verdicts'] };
    expect((await opened(cut)).problems).toContain(`An entry is missing: ${id}`);
    const both = { ...cut, verdictIndex: without(log.verdictIndex, id) as Project['verdictIndex'] };
    const found = await opened(both);
    expect(found.problems).toContain('Entry 3 (Refused by L. Reviewer, 2026-03-02) leans on an entry');
    expect(found.entries).toBe(2);
  });

  it('reordered: the entries are named', async () => {
    const verdicts = {
      ...log.verdicts,
      [ids[0] as string]: { ...entry(0), sequence: 2 },
      [ids[1] as string]: { ...entry(1), sequence: 1 },
    };
    const found = await opened({ verdicts });
    expect(found.problems).toMatch(/Entry 2 \(Refused by J\. Reviewer[^)]*\) was changed/);
    expect(found.problems).toMatch(/Entry 1 \(Refused by K\. Reviewer[^)]*\) was changed/);
    expect(found.entries).toBe(3);
  });

  it('with a key that does not match: the signature is named, and two keys under one name', async () => {
    const other = (await openKeyFile(
      await makeKeyFile('another passphrase'),
      'another passphrase',
    )) as Signer;
    const found = await opened(withEntry(2, { key: other.key }));
    expect(found.problems).toContain('the signature does not fit its content and the key it names');
    expect((await opened(withEntry(2, { key: other.key, by: 'J. Reviewer' }))).problems).toContain(
      'J. Reviewer signed with 2 different keys',
    );
    expect(found.entries).toBe(3);
  });

  it('with a clock set wrong: said beside the log and before signing, and no entry is refused for it', async () => {
    const before = await opened(withEntry(2, { at: '2019-01-01T00:00:00.000Z' }));
    expect(before.notes).toContain('Entry 3 (Refused by L. Reviewer, 2026-03-02) was written before Entry 2');
    expect((await opened(withEntry(2, { on: '2099-01-01' }))).notes).toContain(
      'dated after the day it was written',
    );
    const targets = [{ opening, decision: decide(start, opening) }];
    const behind = { project: log, targets, questions: [], ...day, today: '2020-01-01' };
    expect(verdictWarnings(emptyDraft, behind).join(' ')).toContain('One of them is wrong');
  });
});

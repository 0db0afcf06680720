import { describe, expect, it } from 'vitest';
import { isForbiddenByHand } from '../decide/byHand.ts';
import { decide } from '../decide/decide.ts';
import type { Decision } from '../decide/decision.ts';
import { known } from '../testing/facts.ts';
import { newOpening, newProject } from '../model/newProject.ts';
import type { Opening, Project } from '../model/project.ts';
import { verdictOn, withVerdict } from '../testing/verdicts.ts';

import {
  type Asked,
  conditionsOf,
  emptyDraft,
  type VerdictDraft,
  verdictLabel,
  verdictProblems,
  verdictWarnings,
} from './draft.ts';
import { entryFrom, withdrawalOf } from './log.ts';

const surveyed = { at: '2026-03-01T12:00:00.000Z', by: 'S. Surveyor' };
/** A store room that nothing more can be asked about. */
const store: Opening = {
  ...newOpening('a', '101'),
  facts: {
    doorType: { ...known('single'), ...surveyed },
    leafMaterial: known('hollowMetal'),
    latch: known('mortise'),
  },
};
const project: Project = { ...newProject('p', 'Project'), preparedBy: 'P. Preparer', openings: { a: store } };
const open = decide(project, store);
/** The same decision in another state: getters of the class are asked of the decision itself. */
const like = (over: Partial<Decision>): Decision =>
  new Proxy(open, {
    get: (of, key) => (key in over ? Reflect.get(over, key) : Reflect.get(of, key, of)) as unknown,
  });
const inState = (state: Decision['state'], over: Partial<Decision> = {}): Decision =>
  like({ state, alone: { ...open, state }, ...over });
const settled = inState('settled');
const forbidden = open.rejected[0]?.candidate.id ?? '';
const forced = decide(project, {
  ...store,
  override: { candidate: forbidden, reason: 'Owner', by: 'Owner', at: '2026-03-02T08:00:00Z' },
});

const asked = (decision: Decision = settled, other: Partial<Asked> = {}): Asked => ({
  project,
  targets: [{ opening: store, decision }],
  questions: [],
  today: '2026-03-02',
  dayOf: (instant) => instant.slice(0, 10),
  ...other,
});
const full: VerdictDraft = {
  ...emptyDraft,
  verdict: 'approved',
  by: ' J. Reviewer ',
  role: 'Plan reviewer',
  on: '2026-03-02',
};
const problems = (draft: Partial<VerdictDraft>, about = asked()) =>
  Object.keys(verdictProblems({ ...full, ...draft }, about));

describe('a verdict being filled in', () => {
  it('needs a verdict, a name, a role and a day', () => {
    expect(problems({ verdict: '', by: ' ', role: '', on: 'soon' })).toEqual(['verdict', 'by', 'role', 'on']);
    expect(problems({})).toEqual([]);
  });

  it.each(['x', 'ok', 'xxx', 'n/a', 'Test', '...', '12'])(
    'takes “%s” for no name, role or reason',
    (word) => {
      expect(problems({ by: word, role: word, reason: word })).toEqual(['by', 'role', 'reason']);
    },
  );

  it.each(['ok', 'looks good', 'ok ok ok', 'as per above'])('takes “%s” for no reason', (word) => {
    expect(problems({ verdict: 'refused', reason: word })).toEqual(['reason']);
    expect(problems({ verdict: 'refused', reason: 'Only door of the room.' })).toEqual([]);
  });

  it('is dated after the survey and not after today', () => {
    expect(verdictProblems({ ...full, on: '2099-12-31' }, asked()).on).toContain('after today');
    expect(verdictProblems({ ...full, on: '1999-01-01' }, asked()).on).toContain('2026-03-01');
    expect(problems({ on: '2026-03-01' })).toEqual([]);
    expect(problems({ on: '2026-02-30' })).toEqual(['on']);
  });

  it('needs a reason to refuse, to ask the authority and to withdraw, not to approve', () => {
    for (const verdict of ['refused', 'passedToAuthority', 'withdrawn'] as const) {
      expect(problems({ verdict })).toEqual(['reason']);
    }
  });

  it('needs conditions that can be built or tested, one to a line', () => {
    const verdict = 'approvedWithConditions';
    expect(problems({ verdict })).toEqual(['conditions']);
    expect(problems({ verdict, conditions: 'Sign at the door\nok' })).toEqual(['conditions']);
    const good = { ...full, verdict, conditions: ' Sign at the door \n\nTest with the panel ' } as const;
    expect(problems(good)).toEqual([]);
    expect(conditionsOf(good)).toEqual(['Sign at the door', 'Test with the panel']);
  });
});

describe('an approval', () => {
  const nothing = inState('settled', { chosen: null });

  it.each([
    ['nothing is chosen', nothing],
    ['it is provisional', open],
    ['it is refused', inState('refused')],
    ['it is referred', inState('referred')],
    ['nothing fits', inState('none')],
    ['a rule forbids what was chosen by hand', forced],
  ])('names the authority’s document where %s', (_why, decision) => {
    expect(verdictProblems(full, asked(decision)).reference).toMatch(/^101: .*document/);
    expect(
      problems({ verdict: 'approvedWithConditions', conditions: 'Sign at the door' }, asked(decision)),
    ).toEqual(['reference']);
    expect(problems({ reference: 'ok' }, asked(decision))).toEqual(['reference']);
    expect(problems({ reference: 'AHJ letter of March 2' }, asked(decision))).toEqual([]);
    // Anybody may refuse it.
    expect(problems({ verdict: 'refused', reason: 'Only door of the room.' }, asked(decision))).toEqual([]);
  });

  it('over a refusal waits for its withdrawal or names a document', () => {
    const refusal = verdictOn(project, [{ opening: store, decision: settled }], { verdict: 'refused' });
    const refused = asked(settled, { project: withVerdict(project, refusal) });
    expect(verdictProblems(full, refused).reference).toContain('stands refused by J. Reviewer');
    expect(problems({ reference: 'AHJ letter of March 2' }, refused)).toEqual([]);
  });
});

describe('before somebody signs', () => {
  it('the form says where signer and preparer are one, and where the signer surveyed', () => {
    expect(verdictWarnings({ ...full, by: 'p. preparer' }, asked())).toHaveLength(1);
    expect(verdictWarnings({ ...full, by: 'S. Surveyor' }, asked())[0]).toContain(
      'entered facts at 1 opening',
    );
    expect(verdictWarnings(full, asked())).toEqual([]);
  });

  it('a clock that goes behind the log is named', () => {
    const later = verdictOn(project, [], { on: '2026-06-01' });
    expect(verdictWarnings(full, asked(settled, { project: withVerdict(project, later) }))[0]).toContain(
      '2026-06-01',
    );
  });

  it('an approval of what a rule forbids is said not to decide it', () => {
    expect(isForbiddenByHand(forced)).toBe(true);
    expect(isForbiddenByHand(open)).toBe(false);
    expect(verdictWarnings(full, asked(forced))[0]).toContain('refused by rule, chosen by a person');
  });
});

describe('what is written', () => {
  const written = { id: 'v', at: '2026-03-02T12:00:00.000Z', program: 'test', previousHash: 'h' };

  it('keeps what lay before the reviewer, and the name without stray spaces', () => {
    const entry = entryFrom(full, asked(), written);
    expect(entry).toMatchObject({ by: 'J. Reviewer', verdict: 'approved', sequence: 1, openingIds: ['a'] });
    expect(entry?.saw.openings['a']?.candidate).toBe(open.chosen?.candidate.id);
    expect(entry?.saw.openings['a']?.facts['latch']).toEqual({ is: 'known', value: 'mortise' });
    expect(entryFrom({ ...full, by: 'x' }, asked(), written)).toBeUndefined();
    expect(verdictLabel('approved', 'J. Reviewer', ['101'])).toBe('Approved by J. Reviewer: 101');
  });

  it('of a withdrawal names what it takes back; a withdrawal is not taken back itself', () => {
    const target = verdictOn(project, [{ opening: store, decision: settled }]);
    const { targets: _targets, questions: _questions, ...about } = asked();
    const draft = { ...full, reason: 'The drawing was superseded.' };
    const entry = withdrawalOf(target, draft, about, written);
    expect(entry).toMatchObject({ withdraws: 'v1', verdict: 'withdrawn', openingIds: ['a'] });
    expect(withdrawalOf(target, { ...draft, reason: '' }, about, written)).toBeUndefined();
    expect(withdrawalOf({ ...target, verdict: 'withdrawn' }, draft, about, written)).toBeUndefined();
  });
});

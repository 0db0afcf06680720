import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { necEditions, nfpa72Editions } from '../codes/basis.ts';
import { decide } from '../decide/decide.ts';
import { signOffReasons } from '../words/signOff.ts';
import { type Facts } from '../model/fact.ts';
import { known } from '../testing/facts.ts';
import { openingFactKeys } from '../model/fields.ts';
import { newOpening, newProject, newSpace } from '../model/newProject.ts';
import type { Amendment, Opening, Project } from '../model/project.ts';
import type { Verdict } from '../model/verdict.ts';
import { aBasis, aFactOf, someFacts } from '../testing/arbitraries.ts';
import { verdictOn, withVerdict } from '../testing/verdicts.ts';
import { sightOf } from './sight.ts';
import { reviewState } from './status.ts';

const officeFacts: Facts = {
  doorType: known('single'),
  leafMaterial: known('hollowMetal'),
  frameMaterial: known('hollowMetal'),
  latch: known('mortise'),
  readerSides: known('secure'),
  fireRatingMin: known(45),
  wallRatingMin: known(60),
  wallKind: known('fireBarrier'),
  egressRole: known('exitAccess'),
  occupantLoad: known(4),
  roomUse: known('office'),
  occupancyGroup: known('B'),
};
const office: Opening = { ...newOpening('a', '101'), facts: officeFacts };
const house = (opening: Opening = office): Project => ({
  ...newProject('p', 'Project'),
  openings: { a: opening },
});
const amendment: Amendment = {
  id: 'x',
  says: 'Every office door needs the fire marshal’s letter.',
  source: 'Ordinance 12',
  effect: 'signOff',
  when: {},
  devices: [],
  releases: [],
  failModes: [],
};

const at = (project: Project) => {
  const opening = project.openings['a'] as Opening;
  return { opening, decision: decide(project, opening) };
};
const signed = (project: Project, other: Partial<Verdict> = {}) =>
  withVerdict(project, verdictOn(project, [at(project)], other));
const status = (project: Project) => {
  const { opening, decision } = at(project);
  return reviewState(project, opening, decision);
};
const withFacts = (project: Project, facts: Facts): Project => {
  const { opening } = at(project);
  return { ...project, openings: { a: { ...opening, facts: { ...opening.facts, ...facts } } } };
};

describe('a verdict', () => {
  it('holds while nothing that was judged changes, whatever it says', () => {
    for (const verdict of ['approved', 'approvedWithConditions', 'refused', 'passedToAuthority'] as const) {
      expect(status(signed(house(), { verdict })).state).toBe(verdict);
    }
  });

  it('takes no notice of a new mark, note or a name of a room', () => {
    const project = signed({
      ...house({ ...office, toSpaceId: 's' }),
      spaces: { s: newSpace('s', 'Office') },
    });
    const renamed = {
      ...project,
      spaces: { s: newSpace('s', 'Study') },
      openings: { a: { ...(project.openings['a'] as Opening), mark: '999', notes: 'Painted.' } },
    };
    expect(status(renamed)).toMatchObject({ state: 'approved', says: [] });
  });

  it('goes stale when a fact changes what was signed, says from what to what, and changing back restores it', () => {
    const before = signed(house());
    const after = withFacts(before, { fireRatingMin: known(90) });
    expect(status(after).state).toBe('stale');
    expect(status(after).says).toContain('Fire rating of the door: 45 min → 90 min; signed on 45 min.');
    expect(status(after).marks).toHaveLength(1);
    expect(status(withFacts(after, { fireRatingMin: known(45) })).state).toBe('approved');
  });

  it('names a fact that changed without changing what was signed, and holds', () => {
    const project = signed(withFacts(house(), {}));
    const taller = withFacts(project, { wallRatingMin: known(5) });
    expect(status(taller).state).toBe('approved');
    expect(status(taller).marks[0]?.without).toEqual(['Wall rating: 60 min → 5 min; signed on 60 min.']);
  });

  it('signed on an assumption goes stale when the survey finds another value, not when it finds the same', () => {
    const assumed = { is: 'assumed' as const, value: 60, from: 'drawing A-101' };
    const project = signed(withFacts(house(), { wallRatingMin: assumed }));
    expect(status(withFacts(project, { wallRatingMin: known(5) })).says).toContain(
      'Wall rating: 60 min → 5 min; signed on 60 min.',
    );
    expect(status(withFacts(project, { wallRatingMin: known(60) })).marks[0]?.stale).toBe(false);
  });

  it('goes stale under a new local amendment that asks for something here, and not under one that does not', () => {
    const project = signed(house());
    expect(status({ ...project, amendments: [amendment] }).says).toContain(
      `To be signed for since: ${amendment.says}`,
    );
    const elsewhere = { ...amendment, when: { roomUse: 'detention' } };
    expect(status({ ...project, amendments: [elsewhere] }).state).toBe('approved');
    const reworded = signed({ ...house(), amendments: [amendment] });
    expect(status({ ...reworded, amendments: [{ ...amendment, source: 'Ordinance 13' }] }).state).toBe(
      'stale',
    );
  });

  it('goes stale when the spaces around change what the opening is judged by', () => {
    const project = signed({
      ...house({ ...office, toSpaceId: 's' }),
      spaces: { s: { ...newSpace('s', 'Hall'), occupantLoad: 4 } },
    });
    expect(status(project).state).toBe('approved');
    const crowded = { ...project, spaces: { s: { ...newSpace('s', 'Hall'), occupantLoad: 500 } } };
    expect(status(crowded).says.join(' ')).toContain('Occupant load served: 4 people → 500 people, assumed');
  });

  it('is held against the edition of each rule that spoke, and no other', () => {
    const project = signed(house());
    const other = { ...project, basis: { ...project.basis, ibc: 2018 as const } };
    expect(status(other).says.join(' ')).toMatch(/was read in IBC 2021 .* and is read in IBC 2018/);
  });

  it('goes stale with what the building shows since, and not with what it shows no longer', () => {
    const project = signed(house());
    const { opening, decision } = at(project);
    const found = decision.withSevere([{ key: 'trapped s', says: 'Nobody gets out.', from: 'building' }]);
    expect(reviewState(project, opening, found).says).toEqual([
      'Found in the building since: Nobody gets out.',
    ]);
    const onFound = withVerdict(house(), verdictOn(house(), [{ opening, decision: found }]));
    expect(reviewState(onFound, opening, decision).marks[0]?.stale).toBe(false);
  });

  it('says what it says of a rule whose text changed since', () => {
    const project = house();
    const verdict = verdictOn(project, [at(project)]);
    const sight = verdict.saw.openings['a'];
    const [id, seen] = Object.entries(sight?.rules ?? {})[0] ?? [];
    if (!sight || !id || !seen) throw new Error('No rule spoke at the office.');
    const reworded = { ...sight, rules: { ...sight.rules, [id]: { ...seen, text: 'another' } } };
    const old = withVerdict(project, { ...verdict, saw: { ...verdict.saw, openings: { a: reworded } } });
    expect(status(old).says).toEqual([`${id} reads otherwise than on the day it was signed.`]);
  });

  it('from an older file is held against the facts it kept', () => {
    const project = house();
    const verdict = verdictOn(project, [at(project)]);
    const { mark, candidate, facts } = sightOf(project, office, at(project).decision);
    const saw = { ...verdict.saw, openings: { a: { mark, candidate, facts } } };
    const old = withVerdict(project, { ...verdict, saw, at: null, hash: '' });
    expect(status(old).state).toBe('approved');
    expect(status(withFacts(old, { fireRatingMin: known(90) })).state).toBe('stale');
    const factOfTomorrow = { is: 'known' as const, value: 7 };
    const newer = { ...saw, openings: { a: { mark, candidate, facts: { ...facts, factOfTomorrow } } } };
    expect(status(withVerdict(project, { ...verdict, saw: newer })).state).toBe('approved');
  });
});

describe('several verdicts', () => {
  const project = signed(house(), { verdict: 'refused', reason: 'Only door of the room.' });

  it('all stay on file; a refusal stands beside a later approval', () => {
    const both = signed(project, { by: 'Other person' });
    expect(status(both).state).toBe('refused');
    expect(status(both).marks.map(({ verdict }) => verdict.verdict)).toEqual(['refused', 'approved']);
  });

  it('a refusal gives way to its withdrawal, or to an approval that names a document', () => {
    const withdrawn = signed(project, { verdict: 'withdrawn', withdraws: 'v1', saw: sawNothing });
    expect(status(withdrawn).marks[0]?.withdrawnBy?.id).toBe('v2');
    expect(status(signed(withdrawn)).state).toBe('approved');
    expect(status(signed(project, { reference: 'AHJ letter 7' })).state).toBe('approved');
  });

  it('an approval that was withdrawn approves nothing', () => {
    const asked = { ...house(), amendments: [amendment] };
    const taken = signed(signed(asked), { verdict: 'withdrawn', withdraws: 'v1', saw: sawNothing });
    expect(status(taken).state).toBe('open');
  });

  it('one question answered leaves the others open', () => {
    const asked = {
      ...house(),
      amendments: [amendment, { ...amendment, id: 'y', says: 'A second letter.' }],
    };
    const flags = signOffReasons(at(asked).decision).map(({ flag }) => flag);
    expect(flags).toEqual(['LOCAL-x', 'LOCAL-y']);
    const one = signed(asked, { questions: ['LOCAL-x'] });
    expect(status(one).flags.map(({ state }) => state)).toEqual(['approved', 'open']);
    expect(status(one).state).toBe('open');
  });
});

const sawNothing: Verdict['saw'] = { basis: '', program: '', amendments: {}, openings: {} };

/** Everything an opening's page tells a reviewer, but for the facts themselves. */
function resultOf(project: Project): string {
  const { opening, decision } = at(project);
  const { facts: _facts, weighs: _weighs, mark: _mark, ...result } = sightOf(project, opening, decision);
  return JSON.stringify(result);
}

/** An assumption that was surveyed as it was assumed leaves one reason less, and nothing else. */
function isOnlySurveyed(before: Project, after: Project): boolean {
  const flags = (project: Project) => signOffReasons(at(project).decision).map(({ flag }) => flag);
  const now = flags(after);
  return flags(before).some((flag) => flag.startsWith('assumed:') && !now.includes(flag));
}

describe('whether a verdict still holds', () => {
  const someone = someFacts().map((facts) => house({ ...office, facts: { ...officeFacts, ...facts } }));

  it('a changed fact makes it stale where anything in the result changed, and changing back restores it', () => {
    fc.assert(
      fc.property(
        someone,
        fc.constantFrom(...openingFactKeys).chain((key) => fc.tuple(fc.constant(key), aFactOf(key))),
        (project, [key, fact]) => {
          const before = signed(project);
          expect(status(before).marks[0]?.stale).toBe(false);
          const after = withFacts(before, { [key]: fact });
          const stale = status(after).marks[0]?.stale;
          const same = resultOf(after) === resultOf(before);
          expect(stale || same || isOnlySurveyed(before, after)).toBe(true);
          const back = { ...after, openings: before.openings };
          expect(status(back).marks[0]?.stale).toBe(false);
          // Not relied on when it was signed, and the result is as it was: it holds.
          const relied = Object.hasOwn(before.verdicts['v1']?.saw.openings['a']?.facts ?? {}, key);
          expect(stale && same && !relied).toBe(false);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('an edition, an amendment or a load makes it stale exactly where the result changed', () => {
    const aChange = fc.oneof(
      aBasis.map(
        (basis) =>
          (project: Project): Project => ({ ...project, basis }),
      ),
      fc.constantFrom('prohibit' as const, 'require' as const, 'signOff' as const).map(
        (effect) =>
          (project: Project): Project => ({ ...project, amendments: [{ ...amendment, effect }] }),
      ),
      fc.constantFrom(...necEditions).map(
        (nec) =>
          (project: Project): Project => ({
            ...project,
            basis: { ...project.basis, nec },
          }),
      ),
      fc.constantFrom(...nfpa72Editions).map(
        (nfpa72) =>
          (project: Project): Project => ({
            ...project,
            basis: { ...project.basis, nfpa72 },
          }),
      ),
    );
    fc.assert(
      fc.property(someone, aChange, (project, change) => {
        const before = signed(project);
        const after = change(before);
        expect(status(after).marks[0]?.stale).toBe(resultOf(after) !== resultOf(before));
      }),
      { numRuns: 40 },
    );
  });
});
